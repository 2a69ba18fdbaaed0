import highsLoader from 'highs';
import type { SizingSpec } from '../../src/air/sizing/spec.ts';
import { type PathRow, pathRows } from './pathProgramme.ts';

/** The library, loaded. */
export type Solver = Awaited<ReturnType<typeof highsLoader>>;
export const loadSolver = (): Promise<Solver> => highsLoader();

const whole = (spec: SizingSpec, o: { readonly money: number; readonly labour: number }): number =>
  spec.goal === 'labour' ? Math.round(o.labour) : Math.round(o.money * 100);

/**
 * The least whole cost (cents or seconds) by a general integer-programming library: one of each section's options, one
 * inequality for every pair of a supply way and a return way. Undefined where nothing fits. Losses are whole pascals.
 */
export function integerProgramme(highs: Solver, spec: SizingSpec): number | undefined {
  const options = spec.sections.map((s) => s.options.filter((o) => s.fixed || (o.breaks ?? []).length === 0));
  if (options.some((list) => list.length === 0)) return undefined;
  const name = (i: number, k: number): string => `x_${i}_${k}`;
  const sum = (terms: readonly string[]): string => (terms.length > 0 ? terms.join(' + ') : '0 x_0_0');
  const cost = options.flatMap((list, i) => list.map((o, k) => `${whole(spec, o)} ${name(i, k)}`));
  const one = options.map((list, i) => ` one_${i}: ${sum(list.map((_, k) => name(i, k)))} = 1`);
  const row = ({ of, most }: PathRow, r: number): string => {
    const terms = [...of].flatMap((i) => (options[i] ?? []).map((o, k) => `${Math.round(o.loss)} ${name(i, k)}`));
    return ` way_${r}: ${sum(terms)} <= ${most / 1e6}`;
  };
  const all = options.flatMap((list, i) => list.map((_, k) => name(i, k)));
  const text = [
    'Minimize',
    ` cost: ${sum(cost)}`,
    'Subject To',
    ...one,
    ...pathRows(spec).map(row),
    'Binary',
    ` ${all.join(' ')}`,
    'End',
  ].join('\n');
  const found = highs.solve(text, { mip_rel_gap: 0, mip_abs_gap: 0 });
  return found.Status === 'Optimal' ? Math.round(found.ObjectiveValue) : undefined;
}
