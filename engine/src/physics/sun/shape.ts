/** Fraction of the daily range below the maximum, hours 1 to 24. Source: `sun.design-day` (ASHRAE ch. 14, from memory). */
export const designDayShape: readonly number[] = [
  0.88, 0.92, 0.95, 0.98, 1, 0.98, 0.91, 0.74, 0.55, 0.38, 0.23, 0.13, 0.05, 0, 0, 0.06, 0.14, 0.24, 0.39, 0.5, 0.59,
  0.68, 0.75, 0.82,
];

/** Temperature at the middle of each hour 0.5 to 23.5 of a design day, °C, from its highest and its range. */
export const designDay = (highest: number, range: number): number[] =>
  designDayShape.map((here, i) => {
    const before = designDayShape[(i + 23) % 24] ?? 0;
    return highest - (range * (here + before)) / 2;
  });

/**
 * Mean shape of a day's temperature at a clock hour 0 to 24: its distance from the daily mean over the daily range.
 * Source: `sun.mean-day` (Erbs 1984, from memory).
 */
export function meanDayShape(hour: number): number {
  const t = (2 * Math.PI * (hour - 1)) / 24;
  return (
    0.4632 * Math.cos(t - 3.805) +
    0.0984 * Math.cos(2 * t - 0.36) +
    0.0168 * Math.cos(3 * t - 0.822) +
    0.0138 * Math.cos(4 * t - 3.513)
  );
}
