import { groupedByInput } from './firstOrder.ts';

/** Turns of the samples against the groups that tell what chance alone would gain. */
const turns = [0.17, 0.34, 0.51, 0.68, 0.85] as const;

/**
 * How much more often one would buy the right thing if one input were known, 0 to 1. Each sample names what is right for
 * it; not knowing, one buys what is right most often; knowing the input to within one of `groups` equal groups, one buys
 * what is right most often there. What such groups gain by chance is taken off.
 */
export function rightMoreOften(
  samples: Float64Array,
  choices: ArrayLike<number>,
  dimensions: number,
  groups = 12,
): number[] {
  const n = choices.length;
  const all = Array.from({ length: n }, (_, i) => choices[i] ?? 0);
  const blind = mostOften(all);
  return Array.from({ length: dimensions }, (_, d) => {
    const group = groupedByInput(samples, dimensions, d, groups);
    const byChance = turns.reduce((a, t) => a + rightInGroups(all, group, groups, Math.floor(t * n)), 0) / turns.length;
    return Math.max(0, (rightInGroups(all, group, groups, 0) - Math.max(byChance, blind)) / n);
  });
}

/** Samples for which the choice most often right in their group is right. */
function rightInGroups(choices: readonly number[], group: Int32Array, groups: number, turn: number): number {
  const members = Array.from({ length: groups }, () => [] as number[]);
  choices.forEach((_, i) => {
    members[group[i] ?? 0]?.push(choices[(i + turn) % choices.length] ?? 0);
  });
  return members.reduce((a, m) => a + mostOften(m), 0);
}

/** How often the value met most often is met. */
function mostOften(values: readonly number[]): number {
  const counts = new Map<number, number>();
  for (const v of values) counts.set(v, (counts.get(v) ?? 0) + 1);
  return Math.max(0, ...counts.values());
}
