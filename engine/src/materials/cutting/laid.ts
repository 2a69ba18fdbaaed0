import type { Outcome } from '../../plan/outcome.ts';
import type { CutAnswers } from './result.ts';

/** Pieces of stock that the cut plan takes beyond what is at hand: so many, each so much, in the unit of the list's line. */
export type Laid = { readonly piece: number; readonly count: number };

/** What the cut plan takes of round and flexible duct, by the line of the list; what has no place in it is left to the list. */
export function laidOf(cut: Outcome<CutAnswers>): ReadonlyMap<string, Laid> {
  if (!cut.ok) return new Map();
  const mm = (m: number) => Math.round(m * 1000);
  return new Map([
    ...cut.value.bags.flatMap(({ diameter, coil, plan }): [string, Laid][] =>
      plan.problems.length > 0 ? [] : [[`air/flexible ${mm(diameter)}`, { piece: coil, count: plan.bought }]],
    ),
    ...cut.value.pipes.flatMap(({ diameter, stock, plan }): [string, Laid][] =>
      plan.problems.length > 0 || plan.leftOut.length > 0
        ? []
        : [[`air/round ${mm(diameter)}`, { piece: stock, count: plan.cost }]],
    ),
  ]);
}
