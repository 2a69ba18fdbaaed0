import { type FrontArrays, joinFronts, mergeFronts, shiftFront } from './front.kernel.ts';

/** The exchange between loss and cost of a part of the system, no point worse than another in both. Whole numbers. */
export type Front = FrontArrays & { readonly size: number };

const arrays = (n: number): FrontArrays => ({
  loss: new Float64Array(n),
  cost: new Float64Array(n),
  pick: new Int32Array(n),
});

export const pointFront = (loss: number, cost: number): Front => ({
  size: 1,
  loss: Float64Array.of(loss),
  cost: Float64Array.of(cost),
  pick: new Int32Array(1),
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
    size: kept.length,
    loss: Float64Array.from(kept, (p) => p.loss),
    cost: Float64Array.from(kept, (p) => p.cost),
    pick: Int32Array.from(kept, (p) => p.pick),
  };
}

/** Index of the cheapest point that loses no more than `allowed`, -1 where none does. */
export function within(front: Front, allowed: number): number {
  let [low, high] = [0, front.size];
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
      const out = arrays(a.size + b.size);
      return { ...out, size: joinFronts(a, a.size, b, b.size, out) };
    },
    pointFront(0, 0),
  );

/**
 * One after the other: losses and costs add. Points beyond `limit` are left out; `pick` is the place in `options`.
 * Halves are summed and merged, so that work grows with the logarithm of the number of options.
 */
export function added(options: Front, below: Front, limit: number): Front {
  const part = (from: number, to: number): Front => {
    if (to - from === 1) {
      const out = arrays(below.size);
      const [loss, cost] = [options.loss[from] ?? 0, options.cost[from] ?? 0];
      return { ...out, size: shiftFront(below, below.size, loss, cost, from, limit, out) };
    }
    const middle = (from + to) >> 1;
    const [a, b] = [part(from, middle), part(middle, to)];
    const out = arrays(a.size + b.size);
    return { ...out, size: mergeFronts(a, a.size, b, b.size, out) };
  };
  return options.size === 0 || below.size === 0 ? { ...arrays(0), size: 0 } : part(0, options.size);
}
