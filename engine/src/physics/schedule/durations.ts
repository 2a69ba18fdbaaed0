import type { ThreePoint, WorkPiece } from './work.ts';

/** Mean minutes of three points: (low + 4 likely + high) / 6. Source: PERT, Malcolm and others 1959 (from memory). */
export const meanOf = (x: ThreePoint): number => (x.low + 4 * x.likely + x.high) / 6;

/** Variance in minutes squared: ((high - low) / 6) squared. Source: as for the mean. */
export const varianceOf = (x: ThreePoint): number => ((x.high - x.low) / 6) ** 2;

/** Minutes that a piece is planned with. */
export const plannedMinutes = (p: WorkPiece): number =>
  p.planned ?? (typeof p.minutes === 'number' ? p.minutes : meanOf(p.minutes));

const steps = 512;

/**
 * Minutes below which a piece stays with chance 0, 1/512, ... 1: the beta distribution of which PERT's mean is the mean
 * (shape 4, from memory), by summing its density. One length: that length throughout.
 */
export function quantilesOf(x: number | ThreePoint): Float64Array {
  if (typeof x === 'number') return new Float64Array(steps + 1).fill(x);
  const width = x.high - x.low;
  if (!(width > 0)) return new Float64Array(steps + 1).fill(x.likely);
  const a = (4 * (x.likely - x.low)) / width;
  const b = (4 * (x.high - x.likely)) / width;
  const fine = 4096;
  const sums = new Float64Array(fine + 1);
  for (let k = 0; k < fine; k++) {
    const u = (k + 0.5) / fine;
    sums[k + 1] = (sums[k] ?? 0) + u ** a * (1 - u) ** b;
  }
  const all = sums[fine] ?? 1;
  let k = 0;
  return Float64Array.from({ length: steps + 1 }, (_, q) => {
    while (k < fine && (sums[k + 1] ?? 0) < (q / steps) * all) k++;
    const [from, to] = [sums[k] ?? 0, sums[k + 1] ?? 1];
    const part = to > from ? Math.min(1, ((q / steps) * all - from) / (to - from)) : 0;
    // Rounded, so that the last bit of a power decides nothing.
    return Math.round((x.low + (width * (k + part)) / fine) * 1e6) / 1e6;
  });
}

/** The minutes at a share of chance from 0 to 1. */
export function atShare(quantiles: Float64Array, share: number): number {
  const at = Math.min(steps, Math.max(0, share * steps));
  const low = Math.min(steps - 1, Math.floor(at));
  const x = quantiles[low] ?? 0;
  return x + ((quantiles[low + 1] ?? x) - x) * (at - low);
}
