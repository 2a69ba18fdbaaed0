/**
 * Fronts lie in three arrays: loss rising, cost strictly falling, pick (which option made the point). All numbers are
 * whole, so sums are exact. Functions write into their last arguments.
 */
export type FrontArrays = { readonly loss: Float64Array; readonly cost: Float64Array; readonly pick: Int32Array };

/**
 * Every sum of an option and a point below it as far as `limit`: how many there are, and in `best`, by pieces of
 * `width` from `start`, the least cost that falls into each piece and those before it.
 */
export function surveySums(
  options: FrontArrays,
  below: FrontArrays,
  start: number,
  width: number,
  limit: number,
  best: Float64Array,
): void {
  best.fill(Number.POSITIVE_INFINITY);
  for (let o = 0; o < options.loss.length; o++) {
    const loss = options.loss[o]!;
    const cost = options.cost[o]!;
    for (let m = 0; m < below.loss.length; m++) {
      const sum = below.loss[m]! + loss;
      if (sum > limit) break;
      const piece = Math.floor((sum - start) / width);
      const all = below.cost[m]! + cost;
      if (all < best[piece]!) best[piece] = all;
    }
  }
  for (let k = 1; k < best.length; k++) if (best[k - 1]! < best[k]!) best[k] = best[k - 1]!;
}

/**
 * Keeps of all those sums what is cheaper than anything in an earlier piece, which loses less: option by option, each a
 * rising list that ends at `ends[option]`. Gives their count; without `out` it only counts.
 */
export function keptSums(
  options: FrontArrays,
  below: FrontArrays,
  start: number,
  width: number,
  limit: number,
  best: Float64Array,
  ends: Int32Array,
  out?: FrontArrays,
): number {
  let n = 0;
  for (let o = 0; o < options.loss.length; o++) {
    const loss = options.loss[o]!;
    const cost = options.cost[o]!;
    for (let m = 0; m < below.loss.length; m++) {
      const sum = below.loss[m]! + loss;
      if (sum > limit) break;
      const piece = Math.floor((sum - start) / width);
      const all = below.cost[m]! + cost;
      if (piece > 0 && all >= best[piece - 1]!) continue;
      if (out) {
        out.loss[n] = sum;
        out.cost[n] = all;
        out.pick[n] = o;
      }
      n++;
    }
    ends[o] = n;
  }
  return n;
}

/**
 * One round of merging neighbours: lists that end at `ends` become half as many, each the best of two at every loss.
 * Equal points keep the earlier list's pick. Gives the number of lists; `ends` is overwritten.
 */
export function mergeRound(from: FrontArrays, ends: Int32Array, lists: number, out: FrontArrays): number {
  let m = 0;
  let made = 0;
  for (let k = 0; k < lists; k += 2) {
    let i = k === 0 ? 0 : ends[k - 1]!;
    const endA = ends[k]!;
    let j = endA;
    const endB = k + 1 < lists ? ends[k + 1]! : endA;
    let least = Number.POSITIVE_INFINITY;
    while (i < endA || j < endB) {
      const a = i < endA ? from.loss[i]! : Number.POSITIVE_INFINITY;
      const b = j < endB ? from.loss[j]! : Number.POSITIVE_INFINITY;
      const first = a < b || (a === b && from.cost[i]! <= from.cost[j]!);
      const at = first ? i++ : j++;
      if (from.cost[at]! < least) {
        least = from.cost[at]!;
        out.loss[m] = from.loss[at]!;
        out.cost[m] = least;
        out.pick[m] = from.pick[at]!;
        m++;
      }
    }
    ends[made++] = m;
  }
  return made;
}

/** Two trees at one junction: the worse loss, the costs added. Picks mean nothing here and are 0. Gives the number of points. */
export function joinFronts(a: FrontArrays, b: FrontArrays, out: FrontArrays): number {
  const na = a.loss.length;
  const nb = b.loss.length;
  if (na === 0 || nb === 0) return 0;
  let i = 0;
  let j = 0;
  let m = 0;
  let allowed = Math.max(a.loss[0]!, b.loss[0]!);
  while (allowed < Number.POSITIVE_INFINITY) {
    while (i + 1 < na && a.loss[i + 1]! <= allowed) i++;
    while (j + 1 < nb && b.loss[j + 1]! <= allowed) j++;
    out.loss[m] = allowed;
    out.cost[m] = a.cost[i]! + b.cost[j]!;
    out.pick[m] = 0;
    m++;
    allowed = Math.min(
      i + 1 < na ? a.loss[i + 1]! : Number.POSITIVE_INFINITY,
      j + 1 < nb ? b.loss[j + 1]! : Number.POSITIVE_INFINITY,
    );
  }
  return m;
}

/**
 * What is outside a branch, its neighbours at the same junction included: `around` is outside the junction, `junction`
 * all that hangs there, `own` the branch itself. Neighbours get what `budget` leaves. Gives the number of points.
 */
export function addNeighbours(
  around: FrontArrays,
  junction: FrontArrays,
  own: FrontArrays,
  budget: number,
  out: FrontArrays,
): number {
  let j = junction.loss.length - 1;
  let k = own.loss.length - 1;
  let n = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let m = 0; m < around.loss.length; m++) {
    const left = budget - around.loss[m]!;
    while (j >= 0 && junction.loss[j]! > left) j--;
    while (k >= 0 && own.loss[k]! > left) k--;
    if (j < 0 || k < 0) break;
    const cost = around.cost[m]! + junction.cost[j]! - own.cost[k]!;
    if (cost < least) {
      least = cost;
      out.loss[n] = around.loss[m]!;
      out.cost[n] = cost;
      out.pick[n] = 0;
      n++;
    }
  }
  return n;
}

/** Least sum of costs of a point of each front whose losses together keep within `allowed`; Infinity where none do. */
export function cheapestPair(a: FrontArrays, b: FrontArrays, allowed: number): number {
  let least = Number.POSITIVE_INFINITY;
  let k = b.loss.length - 1;
  for (let i = 0; i < a.loss.length; i++) {
    while (k >= 0 && b.loss[k]! + a.loss[i]! > allowed) k--;
    if (k < 0) break;
    const cost = a.cost[i]! + b.cost[k]!;
    if (cost < least) least = cost;
  }
  return least;
}
