/**
 * Fronts lie in three arrays: loss rising, cost strictly falling, pick (which option made the point). All numbers are
 * whole, so sums are exact. Each function writes into `out` and returns how many points it wrote.
 */
export type FrontArrays = { readonly loss: Float64Array; readonly cost: Float64Array; readonly pick: Int32Array };

/** The first `n` points of a front with an option's loss and cost added, as far as `limit`. */
export function shiftFront(
  below: FrontArrays,
  n: number,
  loss: number,
  cost: number,
  pick: number,
  limit: number,
  out: FrontArrays,
): number {
  let m = 0;
  while (m < n && below.loss[m]! + loss <= limit) {
    out.loss[m] = below.loss[m]! + loss;
    out.cost[m] = below.cost[m]! + cost;
    out.pick[m] = pick;
    m++;
  }
  return m;
}

/** What is best of either of two fronts at each loss. Equal points keep the first front's pick. */
export function mergeFronts(a: FrontArrays, na: number, b: FrontArrays, nb: number, out: FrontArrays): number {
  let i = 0;
  let j = 0;
  let m = 0;
  let least = Number.POSITIVE_INFINITY;
  while (i < na || j < nb) {
    const la = i < na ? a.loss[i]! : Number.POSITIVE_INFINITY;
    const lb = j < nb ? b.loss[j]! : Number.POSITIVE_INFINITY;
    const first = la < lb || (la === lb && a.cost[i]! <= b.cost[j]!);
    const cost = first ? a.cost[i]! : b.cost[j]!;
    if (cost < least) {
      out.loss[m] = first ? la : lb;
      out.cost[m] = cost;
      out.pick[m] = first ? a.pick[i]! : b.pick[j]!;
      least = cost;
      m++;
    }
    if (first) i++;
    else j++;
  }
  return m;
}

/** Two trees at one junction: the worse loss, the costs added. Picks mean nothing here and are 0. */
export function joinFronts(a: FrontArrays, na: number, b: FrontArrays, nb: number, out: FrontArrays): number {
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
