import type { ClimateMonth } from '../result.ts';

/** The coldest month and three on each side: the months, 0 to 11, in their order in time. */
export function winterOf(months: readonly Pick<ClimateMonth, 'mean'>[]): readonly number[] {
  const coldest = months.reduce((best, m, i) => (m.mean < (months[best]?.mean ?? 0) ? i : best), 0);
  return Array.from({ length: 7 }, (_, i) => (coldest + 9 + i) % 12);
}
