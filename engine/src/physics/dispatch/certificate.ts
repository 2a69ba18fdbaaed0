import type { LinearProgramme } from './programme.ts';

/** What values and prices prove of a programme, recomputed from its own numbers. */
export type Certificate = {
  /** Cost of the values, and the cost below which nothing can come, by the prices. */
  readonly cost: number;
  readonly bound: number;
  /** Largest miss of a row or a column's bound, as a share of that row's largest term or of 1. */
  readonly miss: number;
  /** What lies between cost and bound, as a share of the cost or of 1. */
  readonly gap: number;
  /** Whether both are within 1e-6: then the values are the least cost to that share, whoever found them. */
  readonly holds: boolean;
};

const tolerance = 1e-6;

/**
 * Checks an optimum without trusting who found it: the values keep every row and bound, and the prices give a bound
 * that no values can go below (weak duality; columns have finite bounds, so that any prices whatever do). A price that
 * leans on an infinite side of its row is taken as zero. NaN anywhere makes it not hold.
 */
export function certify(lp: LinearProgramme, values: Float64Array, prices: Float64Array): Certificate {
  const cost = dot(lp.cost, values);
  const bound = boundBy(lp, lp.cost, prices);
  const miss = Math.max(missOfRows(lp, values), missOfColumns(lp, values));
  const gap = Math.abs(cost - bound) / Math.max(1, Math.abs(cost));
  return { cost, bound, miss, gap, holds: miss <= tolerance && gap <= tolerance };
}

/** Whether prices prove that nothing fits: without any cost the bound they give is above zero. */
export function provesInfeasible(lp: LinearProgramme, prices: Float64Array): boolean {
  const size = prices.reduce((most, y) => Math.max(most, Math.abs(y)), 0);
  if (!(size > 0)) return false;
  const free = new Float64Array(lp.columns);
  const turned = (sign: number): Float64Array => prices.map((y) => (sign * y) / size);
  return [1, -1].some((sign) => boundBy(lp, free, turned(sign)) > tolerance);
}

/** The least cost over all values within their bounds, rows priced instead of kept. Sums are compensated. */
function boundBy(lp: LinearProgramme, cost: Float64Array, prices: Float64Array): number {
  const total = compensated();
  const price = Float64Array.from(prices, (y, i) => {
    const side = y > 0 ? lp.rowLower[i] : lp.rowUpper[i];
    if (y === 0 || !Number.isFinite(side)) return 0;
    total.add(y * (side ?? 0));
    return y;
  });
  for (let j = 0; j < lp.columns; j++) {
    let reduced = cost[j] ?? 0;
    for (let k = lp.starts[j] ?? 0; k < (lp.starts[j + 1] ?? 0); k++)
      reduced -= (lp.value[k] ?? 0) * (price[lp.index[k] ?? 0] ?? 0);
    total.add(reduced * ((reduced > 0 ? lp.lower[j] : lp.upper[j]) ?? 0));
  }
  return total.sum();
}

function missOfRows(lp: LinearProgramme, values: Float64Array): number {
  const activity = new Float64Array(lp.rows);
  const largest = new Float64Array(lp.rows).fill(1);
  for (let j = 0; j < lp.columns; j++)
    for (let k = lp.starts[j] ?? 0; k < (lp.starts[j + 1] ?? 0); k++) {
      const row = lp.index[k] ?? 0;
      const term = (lp.value[k] ?? 0) * (values[j] ?? Number.NaN);
      activity[row] = (activity[row] ?? 0) + term;
      largest[row] = Math.max(largest[row] ?? 1, Math.abs(term));
    }
  let worst = 0;
  activity.forEach((a, i) => {
    const off = Math.max((lp.rowLower[i] ?? 0) - a, a - (lp.rowUpper[i] ?? 0), 0);
    worst = Math.max(worst, off / (largest[i] ?? 1));
  });
  return worst;
}

function missOfColumns(lp: LinearProgramme, values: Float64Array): number {
  let worst = 0;
  values.forEach((x, j) => {
    const off = Math.max((lp.lower[j] ?? 0) - x, x - (lp.upper[j] ?? 0), 0);
    worst = Math.max(worst, off / Math.max(1, Math.abs(x)));
  });
  return values.length === lp.columns ? worst : Number.NaN;
}

function dot(a: Float64Array, b: Float64Array): number {
  const total = compensated();
  a.forEach((x, i) => {
    total.add(x * (b[i] ?? Number.NaN));
  });
  return total.sum();
}

/** A sum that keeps what rounding drops (Neumaier). */
function compensated(): { readonly add: (x: number) => void; readonly sum: () => number } {
  let [sum, kept] = [0, 0];
  return {
    add: (x) => {
      const next = sum + x;
      kept += Math.abs(sum) >= Math.abs(x) ? sum - next + x : x - next + sum;
      sum = next;
    },
    sum: () => sum + kept,
  };
}
