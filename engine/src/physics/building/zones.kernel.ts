import type { ZoneOrder } from './zoneOrder.ts';

/**
 * Takes zones out of the balance of their air and radiation nodes, `n` in all, one after another and in place: of a zone
 * the inverse of its own two by two block stays, of what it gives its neighbours their shares in it. Without pivoting:
 * for balances that their diagonal dominates. Pairs that `order` does not know are taken to exchange nothing.
 */
export function factorZones(m: Float64Array, n: number, order: ZoneOrder): void {
  const { own, first, node } = order;
  for (let k = 0; k < own.length; k++) {
    const zone = own[k]!;
    const above = zone * n;
    invertBlock(m, above + zone, n);
    const from = first[k]!;
    const to = first[k + 1]!;
    for (let a = from; a < to; a++) takeOut(m, n, above, zone, node[a]! * n, node, from, to);
  }
}

/** Puts the inverse of the two by two block at `at` in its place. */
function invertBlock(m: Float64Array, at: number, n: number): void {
  const a = m[at]!;
  const b = m[at + 1]!;
  const c = m[at + n]!;
  const d = m[at + n + 1]!;
  const whole = 1 / (a * d - b * c);
  m[at] = d * whole;
  m[at + 1] = -b * whole;
  m[at + n] = -c * whole;
  m[at + n + 1] = a * whole;
}

/** Takes a zone out of the two rows of one neighbour. */
function takeOut(
  m: Float64Array,
  n: number,
  above: number,
  zone: number,
  row: number,
  node: Int32Array,
  from: number,
  to: number,
): void {
  const block = above + zone;
  const at = row + zone;
  const air1 = m[at]! * m[block]! + m[at + 1]! * m[block + n]!;
  const air2 = m[at]! * m[block + 1]! + m[at + 1]! * m[block + n + 1]!;
  const rad1 = m[at + n]! * m[block]! + m[at + n + 1]! * m[block + n]!;
  const rad2 = m[at + n]! * m[block + 1]! + m[at + n + 1]! * m[block + n + 1]!;
  m[at] = air1;
  m[at + 1] = air2;
  m[at + n] = rad1;
  m[at + n + 1] = rad2;
  for (let b = from; b < to; b++) {
    const up = above + node[b]!;
    const here = row + node[b]!;
    m[here] = m[here]! - air1 * m[up]! - air2 * m[up + n]!;
    m[here + 1] = m[here + 1]! - air1 * m[up + 1]! - air2 * m[up + n + 1]!;
    m[here + n] = m[here + n]! - rad1 * m[up]! - rad2 * m[up + n]!;
    m[here + n + 1] = m[here + n + 1]! - rad1 * m[up + 1]! - rad2 * m[up + n + 1]!;
  }
}

/** Solves the balance with what `factorZones` left; the solution replaces `x[at]` to `x[at + n - 1]`. */
export function solveZones(m: Float64Array, n: number, order: ZoneOrder, x: Float64Array, at: number): void {
  const { own, first, node } = order;
  const zones = own.length;
  for (let k = 0; k < zones; k++) {
    const zone = own[k]!;
    const air = x[at + zone]!;
    const rad = x[at + zone + 1]!;
    if (air === 0 && rad === 0) continue;
    const end = first[k + 1]!;
    for (let a = first[k]!; a < end; a++) {
      const i = at + node[a]!;
      const share = node[a]! * n + zone;
      x[i] = x[i]! - m[share]! * air - m[share + 1]! * rad;
      x[i + 1] = x[i + 1]! - m[share + n]! * air - m[share + n + 1]! * rad;
    }
  }
  for (let k = zones - 1; k >= 0; k--) {
    const zone = own[k]!;
    const row = zone * n;
    let air = x[at + zone]!;
    let rad = x[at + zone + 1]!;
    const end = first[k + 1]!;
    for (let a = first[k]!; a < end; a++) {
      const i = at + node[a]!;
      const up = row + node[a]!;
      air -= m[up]! * x[i]! + m[up + 1]! * x[i + 1]!;
      rad -= m[up + n]! * x[i]! + m[up + n + 1]! * x[i + 1]!;
    }
    const block = row + zone;
    x[at + zone] = m[block]! * air + m[block + 1]! * rad;
    x[at + zone + 1] = m[block + n]! * air + m[block + n + 1]! * rad;
  }
}
