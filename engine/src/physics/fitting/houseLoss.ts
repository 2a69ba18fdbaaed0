import { determinant, Matrix, solve } from 'ml-matrix';
import { seeded } from '../schedule/seeded.ts';
import { blockOf, drawDays } from './dayBlocks.ts';
import { type LeastSquares, leastSquares } from './leastSquares.ts';
import { normalOf } from './normalOf.kernel.ts';
import { studentT } from './studentT.ts';

/** Means of days in order: °C and W; sun W/m² or W of panels; wind m/s. `rise`: K that the house warmed from midnight to midnight. */
export type DayMeans = {
  readonly day: Float64Array;
  readonly heat: Float64Array;
  readonly apart: Float64Array;
  readonly apartBefore: Float64Array;
  readonly rise: Float64Array;
  readonly sun?: Float64Array;
  readonly wind?: Float64Array;
};

/** A fitted number with its 90 % interval. */
export type Interval = { readonly likely: number; readonly low: number; readonly high: number };

export type HouseLoss = {
  /** W/K outdoors, at the log's mean wind. */
  readonly lossPerDegree: Interval;
  /** W of heat for W/m² of sun on the level (m²), or for W of the panels. */
  readonly aperture?: Interval;
  /** W of heat from all that is not measured. */
  readonly base: number;
  readonly fit: LeastSquares;
  /** The columns that are weather and the house's warming, without drifts of the season. */
  readonly weather: readonly Float64Array[];
};

/** Why days say too little: in words elsewhere. */
export type Weak = 'few-days' | 'no-cold' | 'one-temperature' | 'no-heat' | 'tangled' | 'no-tie';

/** Fewer days, or temperatures closer together (K, standard deviation), say too little: common practice, tried in simulation. */
const daysLeast = 14;
const spanLeast = 2;
const conditionMost = 100;
const draws = 300;
/** Days from which a season's drift can be told from the weather. */
const driftFrom = 28;

/**
 * What a house loses for each degree, by regression of its heat on days: degrees apart, yesterday's degrees, warming of the house,
 * sun, wind, and from four weeks on a drift of the season in gains and sun. Intervals from days drawn again in blocks, never
 * narrower than plain regression's.
 */
export function houseLoss(days: DayMeans, seed: number): HouseLoss | { readonly weak: Weak } {
  const n = days.heat.length;
  if (n < daysLeast) return { weak: 'few-days' };
  if (mean(days.apart) < 5) return { weak: 'no-cold' };
  if (deviationOf(days.apart) < spanLeast) return { weak: 'one-temperature' };
  if (!(mean(days.heat) > 50)) return { weak: 'no-heat' };
  const weather = weatherColumns(days);
  const columns = [...weather, ...driftColumns(days)];
  const fit = leastSquares(columns, days.heat);
  if (!fit || fit.condition > conditionMost) return { weak: fit && fit.freedom > 3 ? 'tangled' : 'few-days' };
  const again = redrawn(columns, days.heat, seed);
  const t = studentT(0.9, fit.freedom);
  const interval = (column: number, sign: 1 | -1): Interval => {
    const likely = sign * (fit.coefficients[column] ?? Number.NaN);
    const half = t * Math.max(fit.standardErrors[column] ?? 0, deviationOf(again.map((c) => c[column] ?? likely)));
    return { likely, low: likely - half, high: likely + half };
  };
  const lossPerDegree = interval(0, 1);
  // Heat that does not rise with the cold says nothing of a house.
  if (!(lossPerDegree.low > 0)) return { weak: 'no-tie' };
  return {
    lossPerDegree,
    ...(days.sun ? { aperture: interval(2, -1) } : {}),
    base: -(fit.coefficients[1] ?? 0),
    fit,
    weather,
  };
}

/** Degrees apart; ones; sun; what yesterday's degrees and the warming of the house add; wind. */
function weatherColumns({ apart, apartBefore, rise, sun, wind }: DayMeans): Float64Array[] {
  const calm = wind ? mean(wind) : 0;
  return [
    apart,
    apart.map(() => 1),
    ...(sun ? [sun] : []),
    apartBefore.map((a, i) => a - (apart[i] ?? 0)),
    ...(deviationOf(rise) > 0.1 ? [rise] : []),
    ...(wind ? [wind.map((w, i) => (w - calm) * (apart[i] ?? 0))] : []),
  ];
}

/** The season's drift in gains, and in what the sun reaches. */
function driftColumns({ day, sun }: DayMeans): Float64Array[] {
  if (day.length < driftFrom) return [];
  const middle = mean(day);
  const since = day.map((d) => d - middle);
  return [since, ...(sun ? [sun.map((s, i) => s * (since[i] ?? 0))] : [])];
}

/** Coefficients of days drawn again, in the scale of the columns as they are. */
function redrawn(columns: readonly Float64Array[], y: Float64Array, seed: number): (readonly number[])[] {
  const random = seeded(seed);
  const p = columns.length;
  const lengths = columns.map((c) => Math.hypot(...c));
  const scaled = columns.map((c, j) => c.map((v) => v / (lengths[j] ?? 1)));
  const again: (readonly number[])[] = [];
  for (let k = 0; k < draws; k++) {
    const { normal, towards } = normalOf(scaled, y, drawDays(random, y.length, blockOf(y.length)));
    const matrix = Matrix.from1DArray(p, p, normal);
    // Days that happen to be too alike say nothing.
    if (!(determinant(matrix) > 1e-14)) continue;
    const solved = solve(matrix, Matrix.columnVector(towards)).to1DArray();
    again.push(solved.map((b, j) => b / (lengths[j] ?? 1)));
  }
  return again;
}

const mean = (x: ArrayLike<number>): number => Array.from(x).reduce((a, b) => a + b, 0) / x.length;

function deviationOf(x: ArrayLike<number>): number {
  const m = mean(x);
  return Math.sqrt(Array.from(x).reduce((a, b) => a + (b - m) ** 2, 0) / Math.max(1, x.length - 1));
}
