import type { CompiledSizing } from './compile.ts';
import { sizeOf } from './front.ts';

/** The least that can be lost, µPa: before each section, from each section to its hardest register, on each side. */
export type Least = {
  readonly own: readonly number[];
  readonly before: readonly number[];
  readonly beyond: readonly number[];
  readonly supply: number;
  readonly return: number;
};

/** Every section at the size that loses least. `lossOf` may stand in for a section's least; Infinity where it has no size. */
export function leastOf(c: CompiledSizing, lossOf: (i: number) => number = (i) => leastOption(c, i)): Least {
  const own = c.sections.map((_, i) => lossOf(i));
  const beyond = c.sections.map(() => 0);
  const before = c.sections.map(() => 0);
  for (const i of [...c.order].reverse())
    beyond[i] = (own[i] ?? 0) + (c.children[i] ?? []).reduce((a, j) => Math.max(a, beyond[j] ?? 0), c.end[i] ?? 0);
  for (const i of c.order) for (const j of c.children[i] ?? []) before[j] = (before[i] ?? 0) + (own[i] ?? 0);
  const worst = (roots: readonly number[]) => roots.reduce((a, i) => Math.max(a, beyond[i] ?? 0), 0);
  return { own, before, beyond, supply: worst(c.roots.supply), return: worst(c.roots.return) };
}

export const leastOption = (c: CompiledSizing, i: number): number => {
  const front = c.options[i];
  return front && sizeOf(front) > 0 ? (front.loss[0] ?? 0) : Number.POSITIVE_INFINITY;
};
