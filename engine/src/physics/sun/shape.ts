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
