import { fraction, type Seeded, seeded } from '../schedule/seeded.ts';
import { leastSquares } from './leastSquares.ts';
import { studentT } from './studentT.ts';

/** The likeliest moment from which the same takes more or less. */
export type ChangeInTime = {
  /** The first row after the change; and the earliest and latest that the rows leave open, nine times of ten. */
  readonly from: number;
  readonly earliest: number;
  readonly latest: number;
  /** What is taken after it over what was taken before, less one; with its 90 % interval. */
  readonly share: number;
  readonly low: number;
  readonly high: number;
  /** How often days without any change show one as strong, by simulation. */
  readonly chance: number;
  /** The change half way through that nine of ten such logs would show (with a chance of 0.05 at most). */
  readonly least: number;
};

const simulations = 199;
/** Rows before and after a change that are needed to see it. */
const ends = 7;
/**
 * How much less likely a place may be than the likeliest, as twice the logarithm, to lie among nine of ten: the distribution
 * (1 - exp(-x/2))² of the ratio at a break (Hansen 2000). From memory; tried on series made for it.
 */
const placesLeft = 5.94;
/**
 * Errors above what is needed at which nine of ten are told: 1.28 for chance, and the rest because a change is at first taken for days
 * that remember each other. By trying on series with changes of every size.
 */
const nineOfTen = 2.5;

/**
 * Looks for a change in time: at each row, whether what the regression predicts is off by one share from there on, by the ratio of
 * likelihoods. How strong the strongest must be is found by simulating days without change, with residuals that remember the day
 * before as these do. Undefined for fewer than 21 rows or a regression that cannot be made. Rows are in order, one a day.
 */
export function changeInTime(
  columns: readonly Float64Array[],
  y: Float64Array,
  seed: number,
): ChangeInTime | undefined {
  const n = y.length;
  const fit = leastSquares(columns, y);
  if (n < 3 * ends || !fit) return undefined;
  const fitted = y.map((v, i) => v - (fit.residuals[i] ?? 0));
  const places = Array.from({ length: n - 2 * ends }, (_, k) => k + ends);
  const steps = places.map((from) =>
    beyond(
      columns,
      fitted.map((v, i) => (i >= from ? v : 0)),
    ),
  );
  const directions = steps.map(direction);
  const seen = strongest(directions, fit.residuals);
  const from = places[seen.at] ?? 0;
  const memory = remembered(fit.residuals);
  const random = seeded(seed);
  const strengths = new Float64Array(simulations);
  for (let s = 0; s < simulations; s++) {
    const noise = beyond(columns, noisy(random, n, memory));
    strengths[s] = strongest(directions, noise).ratio;
  }
  const asStrong = strengths.filter((r) => r >= seen.ratio).length;
  const needed = strengths.sort()[Math.ceil(0.95 * simulations) - 1] ?? 1;
  const step = steps[seen.at] ?? new Float64Array(n);
  const share = dot(step, fit.residuals) / dot(step, step);
  const left = fit.residuals.map((r, i) => r - share * (step[i] ?? 0));
  // The residuals' memory makes days worth less than their number: variance grows by (1 + ρ) / (1 − ρ).
  const wider = Math.sqrt((1 + memory) / (1 - memory));
  const noise = dot(left, left);
  const error = wider * Math.sqrt(noise / (fit.freedom - 1) / dot(step, step));
  const half = studentT(0.9, fit.freedom - 1) * error;
  const open = placesOpen(directions, fit.residuals, seen.ratio, remembered(left));
  const middle = steps[steps.length >> 1] ?? step;
  const own = dot(middle, middle);
  const least =
    Math.sqrt(((needed / (1 - needed)) * noise) / own) + nineOfTen * wider * Math.sqrt(noise / (fit.freedom - 1) / own);
  const scale = againstBefore(columns, y, fitted, from);
  return {
    from,
    earliest: places[open.first] ?? from,
    latest: places[open.last] ?? from,
    share: scale * share,
    low: scale * (share - half),
    high: scale * (share + half),
    chance: (asStrong + 1) / (simulations + 1),
    least,
  };
}

/**
 * What shares of the fit are to be taken times to be shares of what was taken before: the fit of all rows lies between before and after.
 */
function againstBefore(columns: readonly Float64Array[], y: Float64Array, fitted: Float64Array, from: number): number {
  const step = fitted.map((v, i) => (i >= from ? v : 0));
  const both = leastSquares([...columns, step], y);
  const share = both?.coefficients.at(-1);
  if (!both || share === undefined) return 1;
  let all = 0;
  let before = 0;
  for (let i = from; i < y.length; i++) {
    all += step[i] ?? 0;
    before += (y[i] ?? 0) - (both.residuals[i] ?? 0) - share * (step[i] ?? 0);
  }
  return before > 0 && all > 0 ? all / before : 1;
}

/** The first and the last place that explain nearly as much as the strongest. */
function placesOpen(directions: readonly Float64Array[], residuals: Float64Array, most: number, memory: number) {
  const worth = (residuals.length * (1 - memory)) / (1 + memory);
  const all = dot(residuals, residuals);
  const near = directions.map((d) => worth * Math.log((1 - dot(d, residuals) ** 2 / all) / (1 - most)) <= placesLeft);
  return { first: near.indexOf(true), last: near.lastIndexOf(true) };
}

/** A step of length one; nothing where the regression's own columns explain all of it. */
function direction(step: Float64Array): Float64Array {
  const length = Math.sqrt(dot(step, step));
  return step.map((v) => (length > 0 ? v / length : 0));
}

/** What of a column the regression's own columns do not explain. */
const beyond = (columns: readonly Float64Array[], x: Float64Array): Float64Array =>
  leastSquares(columns, x)?.residuals ?? x;

/** The direction that explains most of the residuals, and the share of their squares it explains. */
function strongest(directions: readonly Float64Array[], residuals: Float64Array): { at: number; ratio: number } {
  const all = dot(residuals, residuals);
  let at = 0;
  let ratio = -1;
  directions.forEach((d, k) => {
    const explained = dot(d, residuals) ** 2 / all;
    if (explained > ratio) [at, ratio] = [k, explained];
  });
  return { at, ratio };
}

/** How much of a day's residual stays the next day, 0 to 0.9; made larger for the little that a fit takes away of it. */
function remembered(x: Float64Array): number {
  let across = 0;
  for (let i = 1; i < x.length; i++) across += (x[i] ?? 0) * (x[i - 1] ?? 0);
  const raw = across / dot(x, x);
  return Math.min(0.9, Math.max(0, raw + (1 + 4 * raw) / x.length));
}

function noisy(random: Seeded, n: number, memory: number): Float64Array {
  const x = new Float64Array(n);
  const fresh = Math.sqrt(1 - memory ** 2);
  for (let i = 0; i < n; i++) {
    const normal = Math.sqrt(-2 * Math.log(fraction(random))) * Math.cos(2 * Math.PI * fraction(random));
    x[i] = i === 0 ? normal : memory * (x[i - 1] ?? 0) + fresh * normal;
  }
  return x;
}

function dot(a: Float64Array, b: Float64Array): number {
  let s = 0;
  for (let i = 0; i < a.length; i++) s += (a[i] ?? 0) * (b[i] ?? 0);
  return s;
}
