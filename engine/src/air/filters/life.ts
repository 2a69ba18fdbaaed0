import type { Range } from '@kneewall/project';

/** Times its clean pressure at which a filter is changed. Source: `air.filter-change`. */
export const loadedTimes = 2;

/** Months until a filter's pressure has doubled in a lived-in house, by thickness, m. Source: `air.filter-change`. */
const months: readonly (readonly [number, Range])[] = [
  [0.03, { low: 1, likely: 2, high: 3 }],
  [0.06, { low: 2, likely: 3, high: 6 }],
  [Number.POSITIVE_INFINITY, { low: 6, likely: 9, high: 12 }],
];

/** Months to twice the clean pressure: thin filters one to three, 2 in two to six, thick ones six to twelve. */
export const monthsToDouble = (thickness: number): Range =>
  months.find(([most]) => thickness <= most)?.[1] ?? { low: 1, likely: 2, high: 3 };

/**
 * Face that takes no more than `pressure` (Pa) at `flow` (m³/s), m², for a filter of known clean pressure at a velocity
 * (m/s) that grows with a power of it. All above zero. Source: `air.filter`.
 */
export const faceFor = (
  pressure: number,
  flow: number,
  filter: { readonly pressure: number; readonly velocity: number; readonly exponent: number },
): number => flow / (filter.velocity * (pressure / filter.pressure) ** (1 / filter.exponent));
