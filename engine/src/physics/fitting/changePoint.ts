import { leastSquares } from './leastSquares.ts';

/** Energy = base + slope · max(0, point − temperature), with the least sum of squares there is. */
export type ChangePoint = {
  readonly base: number;
  readonly slope: number;
  readonly point: number;
  readonly sum: number;
};

/**
 * The three numbers of a change-point model (a house that takes a base and, below a point, so much for each degree): the exact least
 * squares, by trying every break between neighbouring temperatures. Undefined for fewer than four different temperatures.
 */
export function changePoint(temperatures: ArrayLike<number>, energies: ArrayLike<number>): ChangePoint | undefined {
  const order = Array.from(temperatures, (_, i) => i).sort((a, b) => (temperatures[a] ?? 0) - (temperatures[b] ?? 0));
  const t = order.map((i) => temperatures[i] ?? Number.NaN);
  const e = order.map((i) => energies[i] ?? Number.NaN);
  if (new Set(t).size < 4) return undefined;
  let best: ChangePoint | undefined;
  const take = (found: ChangePoint | undefined): void => {
    if (found && found.slope > 0 && (!best || found.sum < best.sum)) best = found;
  };
  for (let k = 2; k < t.length; k++) {
    const low = t[k - 1] ?? 0;
    const high = t[k] ?? 0;
    if (high === low) continue;
    take(freeBreak(t, e, k, low, high));
    take(breakAt(t, e, low));
    take(breakAt(t, e, high));
  }
  return best;
}

/** The line below and the mean above, where they meet inside the gap. */
function freeBreak(t: readonly number[], e: readonly number[], k: number, low: number, high: number) {
  const line = leastSquares([t.slice(0, k), new Array(k).fill(1)], e.slice(0, k)) ?? exactLine(t, e, k);
  const above = e.slice(k);
  const base = above.reduce((a, b) => a + b, 0) / above.length;
  const [down = 0, at = 0] = line?.coefficients ?? [];
  const point = (base - at) / down;
  return line && point >= low && point <= high ? judged(t, e, { base, slope: -down, point }) : undefined;
}

/** Two points lie on their line. */
function exactLine(t: readonly number[], e: readonly number[], k: number) {
  const [t1 = 0, t2 = 0] = t;
  const [e1 = 0, e2 = 0] = e;
  if (k !== 2 || t1 === t2) return undefined;
  const down = (e2 - e1) / (t2 - t1);
  return { coefficients: [down, e1 - down * t1] };
}

function breakAt(t: readonly number[], e: readonly number[], point: number): ChangePoint | undefined {
  const fit = leastSquares([t.map((x) => Math.max(0, point - x)), new Array(t.length).fill(1)], e);
  const [slope = 0, base = 0] = fit?.coefficients ?? [];
  return fit ? judged(t, e, { base, slope, point }) : undefined;
}

function judged(t: readonly number[], e: readonly number[], m: Omit<ChangePoint, 'sum'>): ChangePoint {
  const sum = t.reduce((a, x, i) => a + ((e[i] ?? 0) - m.base - m.slope * Math.max(0, m.point - x)) ** 2, 0);
  return { ...m, sum };
}
