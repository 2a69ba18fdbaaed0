import type { Flat } from './fronts.ts';

type Sheet = { readonly w: number; readonly h: number };
type Stock = Sheet & { readonly cost: number; readonly count: number };

/** Least cost of stock with that much area in it, taken by cost per area; parts of a sheet allowed. */
export function areaBound(
  pieces: readonly Flat[],
  demand: ArrayLike<number>,
  stock: readonly Stock[],
  kerf: number,
): number {
  let area = pieces.reduce((sum, p, i) => sum + (demand[i] ?? 0) * (p.w + kerf) * (p.h + kerf), 0);
  const areaOf = (s: Stock) => (s.w + kerf) * (s.h + kerf);
  let cost = 0;
  for (const s of [...stock].sort((a, b) => a.cost / areaOf(a) - b.cost / areaOf(b))) {
    if (area <= 0) break;
    const n = Math.min(s.count, area / areaOf(s));
    cost += n * s.cost;
    area -= n * areaOf(s);
  }
  // A hair off, so that sheets filled to the last are not counted as one more for a rounding.
  return cost * (1 - 1e-12);
}

/** Maps a side, as a whole share of the sheet's, so that what fits side by side still sums to at most 1. */
type Scale = (x: number, whole: number) => number;

const asItIs: Scale = (x, whole) => x / whole;
/** Shares rounded down to k-ths of what is left of k + 1. */
const stepped =
  (k: number): Scale =>
  (x, whole) =>
    ((k + 1) * x) % whole === 0 ? x / whole : Math.floor(((k + 1) * x) / whole) / k;
/** What leaves less than `small` beside it takes all; what is smaller than that takes nothing. */
const rounded =
  (small: number): Scale =>
  (x, whole) =>
    x > whole - small ? 1 : x < small ? 0 : x / whole;

function scalesOf(sides: readonly number[], whole: number): Scale[] {
  const small = [...new Set(sides.filter((x) => 2 * x <= whole))].sort((a, b) => a - b);
  const every = Math.max(1, Math.ceil(small.length / 24));
  const steps = small.filter((_, i) => i % every === 0).map((x) => rounded(x));
  // Everything longer than half keeps company with nothing of its kind.
  return [asItIs, ...[1, 2, 3, 4].map(stepped), rounded(whole / 2), ...steps];
}

/** Of every piece, the share of a sheet that it takes under a pair of scales; of a set that fits, they sum to at most 1. */
export type Shares = { readonly of: Float64Array; readonly bound: number };

/**
 * Sheets that any packing needs, by dual-feasible functions of both sides: under every pair of them one sheet holds at
 * most 1. A piece that may be turned counts with the lesser of its two ways. Holds without the rule of through cuts too.
 * The best `most` pairs, the strongest first. Source: `cutting.dual-feasible`.
 */
export function scaledShares(
  pieces: readonly Flat[],
  demand: ArrayLike<number>,
  sheet: Sheet,
  kerf: number,
  most: number,
): Shares[] {
  const [W, H] = [sheet.w + kerf, sheet.h + kerf];
  const sides = pieces.flatMap((p) => [p.w + kerf, p.h + kerf]);
  const [across, up] = [scalesOf(sides, W), scalesOf(sides, H)];
  const share = (p: Flat, f: Scale, g: Scale): number => {
    const [w, h] = [p.w + kerf, p.h + kerf];
    const straight = w <= W && h <= H ? f(w, W) * g(h, H) : Infinity;
    const turned = p.turns && h <= W && w <= H ? f(h, W) * g(w, H) : Infinity;
    const least = Math.min(straight, turned);
    return least < Infinity ? least : 0;
  };
  const all = across.flatMap((f) =>
    up.map((g): Shares => {
      const of = Float64Array.from(pieces, (p) => share(p, f, g));
      return { of, bound: of.reduce((sum, x, i) => sum + x * (demand[i] ?? 0), 0) * (1 - 1e-9) };
    }),
  );
  return all.sort((a, b) => b.bound - a.bound).slice(0, most);
}
