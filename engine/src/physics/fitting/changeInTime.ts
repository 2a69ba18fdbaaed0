import { fraction, type Seeded, seeded } from '../schedule/seeded.ts';
import { leastSquares } from './leastSquares.ts';
import { studentT } from './studentT.ts';

/** The likeliest moment from which the same takes more or less. */
export type ChangeInTime = {
  /** The first row after the change. */
  readonly from: number;
  /** What is taken after it over what was taken before, less one; with its 90 % interval. */
  readonly share: number;
  readonly low: number;
  readonly high: number;
  /** How often days without any change show one as strong, by simulation. */
  readonly chance: number;
};

const simulations = 199;
/** Rows before and after a change that are needed to see it. */
const ends = 7;

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
  const seen = strongest(steps, fit.residuals);
  const from = places[seen.at] ?? 0;
  const memory = remembered(fit.residuals);
  const random = seeded(seed);
  let asStrong = 0;
  for (let s = 0; s < simulations; s++) {
    const noise = beyond(columns, noisy(random, n, memory));
    if (strongest(steps, noise).ratio >= seen.ratio) asStrong++;
  }
  const step = steps[seen.at] ?? new Float64Array(n);
  const share = dot(step, fit.residuals) / dot(step, step);
  const left = fit.residuals.map((r, i) => r - share * (step[i] ?? 0));
  // The residuals' memory makes days worth less than their number: variance grows by (1 + ρ) / (1 − ρ).
  const wider = Math.sqrt((1 + memory) / (1 - memory));
  const error = wider * Math.sqrt(dot(left, left) / (fit.freedom - 1) / dot(step, step));
  const half = studentT(0.9, fit.freedom - 1) * error;
  return { from, share, low: share - half, high: share + half, chance: (asStrong + 1) / (simulations + 1) };
}

/** What of a column the regression's own columns do not explain. */
const beyond = (columns: readonly Float64Array[], x: Float64Array): Float64Array =>
  leastSquares(columns, x)?.residuals ?? x;

/** The step that explains most of the residuals, and the share it explains. */
function strongest(steps: readonly Float64Array[], residuals: Float64Array): { at: number; ratio: number } {
  const all = dot(residuals, residuals);
  let at = 0;
  let ratio = -1;
  steps.forEach((step, k) => {
    const own = dot(step, step);
    const explained = own > 0 ? dot(step, residuals) ** 2 / own / all : 0;
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
