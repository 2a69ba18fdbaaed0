import { groupedByInput } from './firstOrder.ts';

/**
 * How much less often one would buy the wrong thing if one input were known. Each sample names what is right for it; not
 * knowing, one buys what is right most often. Knowing the input, to within one of `groups` equal groups, one buys what is
 * right most often in that group. The share of samples for which that differs from the one choice made without knowing.
 */
export function changedChoice(
  samples: Float64Array,
  choices: ArrayLike<number>,
  dimensions: number,
  groups = 12,
): number[] {
  const n = choices.length;
  const all = Array.from({ length: n }, (_, i) => choices[i] ?? 0);
  const usual = mostOften(all);
  return Array.from({ length: dimensions }, (_, d) => {
    const group = groupedByInput(samples, dimensions, d, groups);
    const members = Array.from({ length: groups }, () => [] as number[]);
    all.forEach((choice, i) => {
      members[group[i] ?? 0]?.push(choice);
    });
    const moved = members.reduce((a, m) => a + (m.length > 0 && mostOften(m) !== usual ? m.length : 0), 0);
    return moved / n;
  });
}

/** The value met most often; of equals the smallest. */
function mostOften(values: readonly number[]): number {
  const counts = new Map<number, number>();
  for (const v of values) counts.set(v, (counts.get(v) ?? 0) + 1);
  return [...counts].sort((a, b) => b[1] - a[1] || a[0] - b[0])[0]?.[0] ?? 0;
}
