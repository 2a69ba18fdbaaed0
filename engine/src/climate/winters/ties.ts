import type { ClimateMonth, Square, Ties, Triple } from '../result.ts';
import { winterOf } from './winterOf.ts';

/** Ties by the sea, read off one file, Sand Point. Source: `climate.winter-ties`. */
const sea: Ties = {
  now: [
    [1, -0.47, -0.39],
    [-0.47, 1, 0.08],
    [-0.39, 0.08, 1],
  ],
  next: [
    [0.79, -0.38, -0.23],
    [-0.48, 0.28, 0.11],
    [-0.42, 0.1, 0.38],
  ],
  scatter: 0.75,
  gusts: 0.48,
  range: 3.3,
};

/** Ties inland, the mean of four files. Source: `climate.winter-ties`. */
const land: Ties = {
  now: [
    [1, 0.11, 0.17],
    [0.11, 1, -0.14],
    [0.17, -0.14, 1],
  ],
  next: [
    [0.67, -0.04, 0.18],
    [0.21, 0.33, -0.03],
    [-0.08, -0.02, 0.26],
  ],
  scatter: 0.98,
  gusts: 0.39,
  range: 11.5,
};

/** Ties of a place known by its months alone: between sea and land by how far its days and nights lie apart. */
export function tiesOfMonths(months: readonly ClimateMonth[]): Ties {
  const range = winterOf(months).reduce((sum, m) => sum + (months[m]?.dailyRange ?? 0), 0) / 7;
  const share = Math.max(0, Math.min(1, (range - sea.range) / (land.range - sea.range)));
  const mix = (a: number, b: number): number => a + (b - a) * share;
  const row = (a: Triple, b: Triple): Triple => [mix(a[0], b[0]), mix(a[1], b[1]), mix(a[2], b[2])];
  const square = (a: Square, b: Square): Square => [row(a[0], b[0]), row(a[1], b[1]), row(a[2], b[2])];
  return {
    now: square(sea.now, land.now),
    next: square(sea.next, land.next),
    scatter: mix(sea.scatter, land.scatter),
    gusts: mix(sea.gusts, land.gusts),
    range,
  };
}
