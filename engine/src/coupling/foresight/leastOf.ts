import {
  type Certificate,
  certify,
  type Dispatch,
  dispatchProgramme,
  type LinearSolver,
} from '../../physics/dispatch/index.ts';
import type { ControlWay } from './foresightAnswers.ts';

/** The least of a dispatch, proved: its litres are those of the bound. */
export type Least = Omit<ControlWay, 'id' | 'hours'> & { readonly certificate: Certificate };

/**
 * Solves a dispatch and checks the answer; undefined where the solver stops or the check does not hold. `tell` hears a
 * share of the whole, guessed from the steps that such programmes take: about one for each row.
 */
export function leastOf(d: Dispatch, solve: LinearSolver, tell: (share: number) => void): Least | undefined {
  const { programme, at } = dispatchProgramme(d);
  const solved = solve(programme, (steps) => tell(Math.min(1, steps / programme.rows)));
  if (solved.status !== 'optimal') return undefined;
  const certificate = certify(programme, solved.values, solved.prices);
  if (!certificate.holds) return undefined;
  const sum = (columns: Int32Array): number =>
    columns.reduce((total, column) => total + (column < 0 ? 0 : (solved.values[column] ?? 0)), 0);
  const [cold, short] = [sum(at.cold), sum(at.short)];
  const fuel = certificate.bound - cold * (d.house?.cold ?? 0) - short * (d.short?.cost ?? 0);
  return { litres: Math.max(0, fuel), cold, short, certificate };
}
