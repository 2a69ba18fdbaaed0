/** A year as one wave: its mean, half its range, and the share of the year after which it is lowest, 0 to 1. */
export type Wave = { readonly mean: number; readonly amplitude: number; readonly lowest: number };

/** First harmonic of equal parts of a year, each value in the middle of its part. */
export function firstHarmonic(values: readonly number[]): Wave {
  const n = values.length;
  const at = (i: number): number => (2 * Math.PI * (i + 0.5)) / n;
  const cos = (2 / n) * values.reduce((a, v, i) => a + v * Math.cos(at(i)), 0);
  const sin = (2 / n) * values.reduce((a, v, i) => a + v * Math.sin(at(i)), 0);
  const phase = Math.atan2(-sin, -cos);
  return {
    mean: values.reduce((a, v) => a + v, 0) / n,
    amplitude: Math.hypot(cos, sin),
    lowest: (phase / (2 * Math.PI) + 1) % 1,
  };
}
