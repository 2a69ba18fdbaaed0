import type { ZoneOrder } from './zoneOrder.ts';

/**
 * Takes zones out of the balance of their air and radiation nodes, one after another and in place: of a zone the inverse
 * of its own two by two block stays, of what it gives its neighbours their shares in it. Without pivoting: for balances
 * that their diagonal dominates. Blocks lie in `m` as `order` has them.
 */
export function factorZones(m: Float64Array, order: ZoneOrder): void {
  const { own, first, node, block } = order;
  const zones = own.length;
  let at = 0;
  for (let k = 0; k < zones; k++) {
    const from = first[k]!;
    const to = first[k + 1]!;
    invertBlock(m, at);
    let lower = at + 4;
    for (let a = from; a < to; a++) {
      const row = (node[a]! >> 1) * zones;
      takeShares(m, lower, at);
      let upper = at + 8;
      for (let b = from; b < to; b++) {
        takeProduct(m, block[row + (node[b]! >> 1)]!, lower, upper);
        upper += 8;
      }
      lower += 8;
    }
    at = lower;
  }
}

/** Puts the inverse of the two by two block at `at` in its place. */
function invertBlock(m: Float64Array, at: number): void {
  const a = m[at]!;
  const b = m[at + 1]!;
  const c = m[at + 2]!;
  const d = m[at + 3]!;
  const whole = 1 / (a * d - b * c);
  m[at] = d * whole;
  m[at + 1] = -b * whole;
  m[at + 2] = -c * whole;
  m[at + 3] = a * whole;
}

/** Puts the block at `at` times that at `own` in its place. */
function takeShares(m: Float64Array, at: number, own: number): void {
  const air1 = m[at]! * m[own]! + m[at + 1]! * m[own + 2]!;
  const air2 = m[at]! * m[own + 1]! + m[at + 1]! * m[own + 3]!;
  const rad1 = m[at + 2]! * m[own]! + m[at + 3]! * m[own + 2]!;
  const rad2 = m[at + 2]! * m[own + 1]! + m[at + 3]! * m[own + 3]!;
  m[at] = air1;
  m[at + 1] = air2;
  m[at + 2] = rad1;
  m[at + 3] = rad2;
}

/** Takes the product of the blocks at `a` and `b` off the block at `at`. */
function takeProduct(m: Float64Array, at: number, a: number, b: number): void {
  m[at] = m[at]! - m[a]! * m[b]! - m[a + 1]! * m[b + 2]!;
  m[at + 1] = m[at + 1]! - m[a]! * m[b + 1]! - m[a + 1]! * m[b + 3]!;
  m[at + 2] = m[at + 2]! - m[a + 2]! * m[b]! - m[a + 3]! * m[b + 2]!;
  m[at + 3] = m[at + 3]! - m[a + 2]! * m[b + 1]! - m[a + 3]! * m[b + 3]!;
}

/**
 * Solves the balance with what `factorZones` left, for several right sides at once, whose numbers lie side by side in `x`,
 * node after node; the solutions replace them.
 */
export function solveZones(m: Float64Array, order: ZoneOrder, x: Float64Array, sides: number): void {
  const { own, first, node } = order;
  const zones = own.length;
  let p = 0;
  for (let k = 0; k < zones; k++) {
    const zone = own[k]! * sides;
    const end = first[k + 1]!;
    p += 4;
    for (let a = first[k]!; a < end; a++) {
      takeOff(m, p, x, node[a]! * sides, zone, sides);
      p += 8;
    }
  }
  for (let k = zones - 1; k >= 0; k--) {
    const zone = own[k]! * sides;
    const start = first[k]!;
    for (let a = first[k + 1]! - 1; a >= start; a--) {
      takeOff(m, p - 4, x, zone, node[a]! * sides, sides);
      p -= 8;
    }
    p -= 4;
    timesBlock(m, p, x, zone, sides);
  }
}

/** Takes a block times the right sides of one zone off those of another. */
function takeOff(m: Float64Array, p: number, x: Float64Array, into: number, from: number, sides: number): void {
  const a = m[p]!;
  const b = m[p + 1]!;
  const c = m[p + 2]!;
  const d = m[p + 3]!;
  for (let j = 0; j < sides; j++) {
    const air = x[from + j]!;
    const rad = x[from + sides + j]!;
    x[into + j] = x[into + j]! - a * air - b * rad;
    x[into + sides + j] = x[into + sides + j]! - c * air - d * rad;
  }
}

/** Puts a block times the right sides of a zone in their place. */
function timesBlock(m: Float64Array, p: number, x: Float64Array, zone: number, sides: number): void {
  for (let j = 0; j < sides; j++) {
    const air = x[zone + j]!;
    const rad = x[zone + sides + j]!;
    x[zone + j] = m[p]! * air + m[p + 1]! * rad;
    x[zone + sides + j] = m[p + 2]! * air + m[p + 3]! * rad;
  }
}
