/** Scratch of the fullest-worth search: pieces sorted by worth per length, the best first. Whole lengths. */
export type Fill = {
  n: number;
  readonly size: Float64Array;
  readonly worth: Float64Array;
  readonly most: Int32Array;
  readonly take: Int32Array;
  /** Counts of the best found. */
  readonly best: Int32Array;
  /** No filling is worth more than this: the best found where the search ended, else a bound of its rest. */
  upper: number;
};

export const fillOf = (n: number): Fill => ({
  n,
  size: new Float64Array(n),
  worth: new Float64Array(n),
  most: new Int32Array(n),
  take: new Int32Array(n),
  best: new Int32Array(n),
  upper: 0,
});

/** Steps after which something better than the floor is good enough for now. */
const quickSteps = 3000;

/**
 * Worth of the most valuable filling of one length, by going through counts and turning back where the rest cannot win.
 * Stops at `stepsMost`, and sooner once it has one above the floor.
 */
export function bestFill(f: Fill, capacity: number, floor: number, stepsMost: number): number {
  const { n, size, worth, most, take, best } = f;
  let left = capacity;
  let now = 0;
  let found = 0;
  let steps = 0;
  let i = 0;
  best.fill(0);
  take.fill(0);
  f.upper = n === 0 ? 0 : (capacity * worth[0]!) / size[0]!;
  for (;;) {
    for (; i < n; i++) {
      const t = Math.min(most[i]!, Math.floor(left / size[i]!));
      take[i] = t;
      left -= t * size[i]!;
      now += t * worth[i]!;
    }
    if (now > found) {
      found = now;
      best.set(take);
    }
    // Back to the last piece of which there can be one less and the rest might still win.
    let back = n - 1;
    for (; back >= 0; back--) {
      if (take[back]! === 0) continue;
      take[back]!--;
      left += size[back]!;
      now -= worth[back]!;
      const next = back + 1;
      if (next < n && now + (left * worth[next]!) / size[next]! > found + 1e-12) break;
      left += take[back]! * size[back]!;
      now -= take[back]! * worth[back]!;
      take[back] = 0;
    }
    if (back < 0) {
      f.upper = found;
      return found;
    }
    if (++steps > (found > floor ? quickSteps : stepsMost)) return found;
    i = back + 1;
  }
}
