import { Matrix, solve } from 'ml-matrix';

/** A least-squares search as it ended. */
export type Searched = {
  readonly at: readonly number[];
  /** Sum of squared misses. */
  readonly sum: number;
  readonly misses: Float64Array;
  /** How each miss moves with each parameter, a column a parameter. */
  readonly slopes: readonly Float64Array[];
  /** Whether a step no longer helped; false where it ran out of steps. */
  readonly settled: boolean;
};

/** Steps of the search, and by how much of each parameter's scale slopes are taken. */
const stepsMost = 60;
const nudge = 1e-5;

/**
 * Levenberg's and Marquardt's search for the parameters with the least sum of squared misses (Marquardt 1963). `misses` writes
 * into the array it is given; parameters should be of the size of one (logarithms, shares).
 */
export function marquardt(
  start: readonly number[],
  count: number,
  misses: (at: readonly number[], into: Float64Array) => void,
): Searched {
  let at = [...start];
  let now = new Float64Array(count);
  misses(at, now);
  let sum = squares(now);
  let damping = 1e-2;
  let slopes = slopesAt(at, now, misses);
  let settled = false;
  for (let step = 0; step < stepsMost && !settled; step++) {
    const { normal, towards } = normalOf(slopes, now);
    let better = false;
    for (let trial = 0; trial < 12; trial++) {
      const next = at.map((x, i) => x + (stepOf(normal, towards, damping)[i] ?? 0));
      const into = new Float64Array(count);
      misses(next, into);
      const reached = squares(into);
      if (Number.isFinite(reached) && reached < sum) {
        settled = sum - reached < 1e-9 * sum;
        [at, now, sum, better] = [next, into, reached, true];
        damping = Math.max(damping / 6, 1e-9);
        break;
      }
      damping *= 5;
    }
    if (!better) settled = true;
    else slopes = slopesAt(at, now, misses);
  }
  return { at, sum, misses: now, slopes, settled };
}

function slopesAt(
  at: readonly number[],
  now: Float64Array,
  misses: (at: readonly number[], into: Float64Array) => void,
): Float64Array[] {
  return at.map((x, j) => {
    const moved = new Float64Array(now.length);
    const by = nudge * Math.max(1, Math.abs(x));
    misses(
      at.map((v, i) => (i === j ? v + by : v)),
      moved,
    );
    for (let i = 0; i < moved.length; i++) moved[i] = ((moved[i] ?? 0) - (now[i] ?? 0)) / by;
    return moved;
  });
}

function normalOf(slopes: readonly Float64Array[], now: Float64Array) {
  const normal = slopes.map((a) => slopes.map((b) => dot(a, b)));
  return { normal, towards: slopes.map((a) => -dot(a, now)) };
}

function stepOf(normal: readonly (readonly number[])[], towards: readonly number[], damping: number): number[] {
  const damped = normal.map((row, i) => row.map((v, j) => (i === j ? v * (1 + damping) + 1e-12 : v)));
  return solve(new Matrix(damped), Matrix.columnVector([...towards])).to1DArray();
}

function dot(a: Float64Array, b: Float64Array): number {
  let s = 0;
  for (let i = 0; i < a.length; i++) s += (a[i] ?? 0) * (b[i] ?? 0);
  return s;
}

const squares = (x: Float64Array): number => dot(x, x);
