import { type FrontArrays, joinFronts, keptSums, mergeRound, surveySums } from './front.kernel.ts';

/** The exchange between loss and cost of a part of the system, no point worse than another in both. Whole numbers. */
export type Front = FrontArrays;

export const frontArrays = (n: number): Front => ({
  loss: new Float64Array(n),
  cost: new Float64Array(n),
  pick: new Int32Array(n),
});

export const pointFront = (loss: number, cost: number): Front => ({
  loss: Float64Array.of(loss),
  cost: Float64Array.of(cost),
  pick: new Int32Array(1),
});

export const sizeOf = (front: Front): number => front.loss.length;

/** The first `n` points, in arrays of their own. */
export const cutTo = (front: Front, n: number): Front => ({
  loss: front.loss.slice(0, n),
  cost: front.cost.slice(0, n),
  pick: front.pick.slice(0, n),
});

/** A front of loose points, each with its place in the list as pick. Equal points keep the first. */
export function frontOf(
  points: readonly { readonly loss: number; readonly cost: number; readonly pick: number }[],
): Front {
  const sorted = [...points].sort((a, b) => a.loss - b.loss || a.cost - b.cost || a.pick - b.pick);
  let least = Number.POSITIVE_INFINITY;
  const kept = sorted.filter((p) => {
    const better = p.cost < least;
    least = Math.min(least, p.cost);
    return better;
  });
  return {
    loss: Float64Array.from(kept, (p) => p.loss),
    cost: Float64Array.from(kept, (p) => p.cost),
    pick: Int32Array.from(kept, (p) => p.pick),
  };
}

/** Index of the cheapest point that loses no more than `allowed`, -1 where none does. */
export function within(front: Front, allowed: number): number {
  let [low, high] = [0, sizeOf(front)];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((front.loss[middle] ?? 0) <= allowed) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}

/** Least cost within `allowed`, Infinity where nothing is. */
export function costWithin(front: Front, allowed: number): number {
  const i = within(front, allowed);
  return i < 0 ? Number.POSITIVE_INFINITY : (front.cost[i] ?? 0);
}

/** All of `fronts` hanging at one junction. */
export const joined = (fronts: readonly Front[]): Front =>
  fronts.reduce(
    (a, b) => {
      const out = frontArrays(sizeOf(a) + sizeOf(b));
      return cutTo(out, joinFronts(a, b, out));
    },
    pointFront(0, 0),
  );

/** Sums a piece of the survey stands for, and most pieces. */
const sumsAPiece = 8;
const mostPieces = 4096;

/**
 * One after the other: losses and costs add. Points beyond `limit` are left out; `pick` is the place in `options`. A
 * survey of all sums first drops what is plainly beaten, so that only little is left to merge.
 */
export function added(options: Front, below: Front, limit: number): Front {
  const [k, n] = [sizeOf(options), sizeOf(below)];
  const start = (options.loss[0] ?? 0) + (below.loss[0] ?? 0);
  if (k * n === 0 || start > limit) return frontArrays(0);
  const pieces = Math.max(1, Math.min(mostPieces, Math.floor((k * n) / sumsAPiece)));
  // A little more than its share, so that the limit itself falls into the last piece.
  const width = Math.max(1, ((limit - start) / pieces) * (1 + 1e-9));
  const best = new Float64Array(pieces + 1);
  surveySums(options, below, start, width, limit, best);
  const ends = new Int32Array(k);
  const count = keptSums(options, below, start, width, limit, best, ends);
  let [from, to] = [frontArrays(count), frontArrays(count)];
  keptSums(options, below, start, width, limit, best, ends, from);
  let lists = k;
  while (lists > 1) {
    lists = mergeRound(from, ends, lists, to);
    [from, to] = [to, from];
  }
  return cutTo(from, ends[0] ?? 0);
}
