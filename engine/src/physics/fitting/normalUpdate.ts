/** A number known as a normal distribution: its mean and standard deviation, in one unit. */
export type Normal = { readonly mean: number; readonly deviation: number };

/** What is known after a reading, both normal: each counts by the inverse of its variance. */
export function normalUpdate(before: Normal, reading: Normal): Normal {
  const a = 1 / before.deviation ** 2;
  const b = 1 / reading.deviation ** 2;
  return { mean: (a * before.mean + b * reading.mean) / (a + b), deviation: Math.sqrt(1 / (a + b)) };
}
