export type CutTable = {
  /** Places of cuts in rising order, the first 0. */
  readonly xs: Float64Array;
  readonly ys: Float64Array;
  /** By place of x, then of y: most value of a part that wide and high; at first of a single piece. */
  readonly value: Float64Array;
  readonly kerf: number;
};

/** Index of the last place not beyond `at`; -1 where there is none. */
function below(places: Float64Array, at: number, from: number): number {
  let k = from;
  while (k >= 0 && places[k]! > at) k--;
  return k;
}

/** Raises each part's value to that of its best first cut, small parts before large ones. */
export function bestCut({ xs, ys, value, kerf }: CutTable): void {
  const n = ys.length;
  for (let i = 1; i < xs.length; i++)
    for (let j = 1; j < n; j++) {
      let best = value[i * n + j]!;
      let rest = i;
      for (let a = 1; a < i; a++) {
        rest = below(xs, xs[i]! - xs[a]! - kerf, rest);
        if (rest < a) break;
        const both = value[a * n + j]! + value[rest * n + j]!;
        if (both > best) best = both;
      }
      rest = j;
      for (let b = 1; b < j; b++) {
        rest = below(ys, ys[j]! - ys[b]! - kerf, rest);
        if (rest < b) break;
        const both = value[i * n + b]! + value[i * n + rest]!;
        if (both > best) best = both;
      }
      value[i * n + j] = best;
    }
}
