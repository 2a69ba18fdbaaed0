import type { Range } from '@kneewall/project';

/** A triangular density: nothing outside `from` and `to`, its peak at `mode`. */
type Triangle = { readonly from: number; readonly mode: number; readonly to: number };

/** What two independent statements about one number say together. */
export type Joint = {
  /**
   * How well they agree: the integral of the product of both densities, as a share of what the wider one has with
   * itself. 1 where both are the same, 0 where nothing satisfies both; above 1 where a narrow one stands at the peak
   * of a wide one.
   */
  readonly overlap: number;
  /** 2.5 %, mode and 97.5 % of the product of both densities; undefined where `overlap` is 0. */
  readonly range?: Range;
};

/** The share of a density that is left out at each end of a range. */
const tail = 0.025;
const cells = 512;

/**
 * Two independent ranges of the same number joined: the product of their densities, on a fixed grid over what both
 * hold possible. A range is taken as a triangular density with its peak at `likely` and 2.5 % beyond each end, so that
 * a range which says nothing leaves the other as it is. The peak is exact; the ends are to 1/512 of the common stretch.
 * Ranges are ordered and finite, in one unit; a range without width is taken as certain. Source: `loads.joint`.
 */
export function jointRange(a: Range, b: Range): Joint {
  if (widthOf(a) === 0) return certain(a, b);
  if (widthOf(b) === 0) return certain(b, a);
  const [left, right] = [triangleOf(a), triangleOf(b)].sort((p, q) => p.mode - q.mode) as [Triangle, Triangle];
  const from = Math.max(left.from, right.from);
  const to = Math.min(left.to, right.to);
  if (from >= to) return { overlap: 0 };
  const step = (to - from) / cells;
  const product = Array.from({ length: cells }, (_, i) => {
    const x = from + (i + 0.5) * step;
    return densityAt(left, x) * densityAt(right, x);
  });
  const total = product.reduce((sum, p) => sum + p, 0);
  if (total === 0) return { overlap: 0 };
  const overlap = (total * step) / Math.min(withItself(left), withItself(right));
  // Between the peaks the left one falls to nothing at its end and the right one rises from its own.
  const likely = Math.min(Math.max((left.to + right.from) / 2, left.mode), right.mode);
  const at = (share: number): number => from + step * cellsBelow(product, share * total);
  const range = { low: Math.min(at(tail), likely), likely, high: Math.max(at(1 - tail), likely) };
  return { overlap, range: noWider(range, Math.min(widthOf(a), widthOf(b))) };
}

const widthOf = (r: Range): number => r.high - r.low;

/**
 * Two skewed ranges that lean away from each other can have a product up to 4 % wider than the narrower of them. A
 * second witness never makes the first less sure: both ends are then drawn in towards the peak alike.
 */
function noWider(r: Range, most: number): Range {
  const share = Math.min(1, most / widthOf(r));
  return { low: r.likely - share * (r.likely - r.low), likely: r.likely, high: r.likely + share * (r.high - r.likely) };
}

/** A certain number against a range: it stands, where the range holds it possible at all. */
function certain(sure: Range, other: Range): Joint {
  if (widthOf(other) === 0) return other.likely === sure.likely ? { overlap: 1, range: sure } : { overlap: 0 };
  const t = triangleOf(other);
  const overlap = densityAt(t, sure.likely) / withItself(t);
  return overlap === 0 ? { overlap } : { overlap, range: sure };
}

/**
 * The triangle that leaves `tail` beyond each end of the range. With u and v the sides of its peak, the tail below is
 * (u − u0)² / ((u + v) u) and above alike; both sides are found by substitution, which closes in by half each time.
 */
function triangleOf({ low, likely, high }: Range): Triangle {
  let u = high - low;
  let v = high - low;
  for (let i = 0; i < 60; i++) {
    const base = u + v;
    u = likely - low + Math.sqrt(tail * base * u);
    v = high - likely + Math.sqrt(tail * base * v);
  }
  return { from: likely - u, mode: likely, to: likely + v };
}

function densityAt({ from, mode, to }: Triangle, x: number): number {
  if (x <= from || x >= to) return 0;
  const peak = 2 / (to - from);
  return x < mode ? (peak * (x - from)) / (mode - from) : (peak * (to - x)) / (to - mode);
}

/** The integral of a triangular density's square, whatever its peak. */
const withItself = ({ from, to }: Triangle): number => 4 / (3 * (to - from));

/** How many cells from the left hold `amount` together, the last one in part. */
function cellsBelow(product: readonly number[], amount: number): number {
  let sum = 0;
  for (let i = 0; i < product.length; i++) {
    const p = product[i] ?? 0;
    if (sum + p >= amount) return i + (p > 0 ? (amount - sum) / p : 0);
    sum += p;
  }
  return product.length;
}
