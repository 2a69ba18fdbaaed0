import { lowerBounds, type SolvedPlan, solvePlan } from '@kneewall/engine/physics';
import { type Row, row } from '../src/row.ts';
import type { Instance } from './instance.ts';
import { layInstance } from './layInstance.ts';
import { readInstance } from './readInstance.ts';

/** Contradictions within which an instance is solved: a count, so that every machine gives the same. */
const limit = 60_000;
/** More of them for an unseen one, fewer where each takes longer. */
const limitTold = (jobs: number): number => Math.min(150_000, Math.floor(12_000_000 / jobs));

export type Solved = { readonly instance: Instance; readonly solved: SolvedPlan; readonly wrong: readonly string[] };

export function solveInstance(text: string, told: boolean): Solved {
  const instance = readInstance(text);
  const effort = told
    ? { plans: 10_000, conflicts: limitTold(instance.durations.length) }
    : { plans: 1000, conflicts: limit };
  const solved = solvePlan(layInstance(instance), effort);
  return { instance, solved, wrong: whatIsWrong(instance, solved.starts) };
}

/** Holds starts against the instance as it was read, period by period; knows nothing of layouts. */
export function whatIsWrong({ durations, needs, after, capacity }: Instance, starts: ArrayLike<number>): string[] {
  const at = (i: number): number => starts[i] ?? Number.NaN;
  const end = (i: number): number => at(i) + (durations[i] ?? Number.NaN);
  const wrong = durations.flatMap((_, i) =>
    at(i) >= 0 && Number.isInteger(at(i)) ? [] : [`job ${i + 1} has no start`],
  );
  after.forEach((list, i) => {
    for (const j of list) if (!(end(i) <= at(j))) wrong.push(`job ${j + 1} starts before job ${i + 1} ends`);
  });
  for (let t = 0; t < Math.max(...durations.map((_, i) => end(i))); t++)
    capacity.forEach((units, r) => {
      const use = durations.reduce((a, _, i) => a + (at(i) <= t && t < end(i) ? (needs[i]?.[r] ?? 0) : 0), 0);
      if (use > units) wrong.push(`resource ${r + 1} is short in period ${t}`);
    });
  return wrong;
}

/** What is known of an instance: its optimum, where it is; `told`: a gap is stated, not forbidden. */
export type Known = { readonly optimum?: number | undefined; readonly told?: boolean };

/**
 * Rows of one instance: its makespan, counted from the checked plan, not from what the search says of it; the lower bound; the gap. Without
 * a known optimum the makespan has to lie between the bound and the bound plus the stated gap.
 */
export function rowsOfInstance(name: string, text: string, { optimum, told = false }: Known): Row[] {
  const { instance, solved, wrong } = solveInstance(text, told);
  const last = instance.durations.map((d, i) => d + (solved.starts[i] ?? Number.NaN));
  const makespan = wrong.length === 0 ? Math.max(...last) : Number.NaN;
  const bound = lowerBounds(layInstance(instance)).best;
  const truth = { source: 'rcpsp', case: name, unit: 'periods', tolerance: 0 } as const;
  const known = optimum === undefined ? 'computed' : 'looked up';
  const between = { low: Math.max(bound, solved.bound), high: solved.end };
  const expected = optimum === undefined ? between : { expected: optimum };
  return [
    row({ ...truth, field: 'makespan', ...expected, known }, makespan),
    row({ ...truth, field: 'lower bound', low: bound, high: optimum ?? solved.end, known }, solved.bound),
    row({ ...truth, field: 'gap', low: 0, high: told ? makespan : 0, known: 'computed' }, makespan - solved.bound),
  ];
}
