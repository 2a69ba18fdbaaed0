import type { Obstacles } from './obstacles.ts';

const most = 12;
/** Of every obstacle that a pose can miss on one side only: that side's direction, the gap, its slope and bend over the turn. */
const gx = new Float64Array(most);
const gy = new Float64Array(most);
const gap = new Float64Array(most);
const slope = new Float64Array(most);
const bend = new Float64Array(most);
/** 1 where the direction turns with the piece. */
const turning = new Uint8Array(most);
/** Corners of the obstacle that lie furthest along the piece's axes, and the four gaps on its own sides. */
const corner = new Int32Array(4);
const ownGap = new Float64Array(4);

/**
 * Collects the sides on which poses within `flat` m and `turn` radians could miss each obstacle, where it is only one. The gap
 * there is at most gap + slope t + bend t t / 2 + direction . (dx, dy). Returns their number; -1 where an obstacle cannot be missed.
 */
function sides(
  o: Obstacles,
  x: number,
  y: number,
  cos: number,
  sin: number,
  a: number,
  b: number,
  flat: number,
  turn: number,
): number {
  const { starts, x: px, y: py, nx, ny, off } = o;
  const count = starts.length - 1;
  const reach = Math.sqrt(a * a + b * b);
  const move = flat + reach * turn;
  let n = 0;
  for (let j = 0; j < count && n < most; j++) {
    const from = starts[j] as number;
    const to = starts[j + 1] as number;
    let ways = 0;
    let which = 0;
    let apart = false;
    ownGap.fill(Number.POSITIVE_INFINITY);
    for (let k = from; k < to; k++) {
      const mx = nx[k] as number;
      const my = ny[k] as number;
      const g =
        mx * x + my * y - a * Math.abs(mx * cos + my * sin) - b * Math.abs(my * cos - mx * sin) - (off[k] as number);
      if (g > -move) {
        ways++;
        which = k;
        if (g > move) apart = true;
      }
      const rx = (px[k] as number) - x;
      const ry = (py[k] as number) - y;
      const u = rx * cos + ry * sin;
      const v = ry * cos - rx * sin;
      if (u - a < (ownGap[0] as number)) own(0, u - a, k);
      if (-u - a < (ownGap[1] as number)) own(1, -u - a, k);
      if (v - b < (ownGap[2] as number)) own(2, v - b, k);
      if (-v - b < (ownGap[3] as number)) own(3, -v - b, k);
    }
    if (apart) continue;
    for (let s = 0; s < 4; s++) {
      const q = corner[s] as number;
      const rx = (px[q] as number) - x;
      const ry = (py[q] as number) - y;
      if ((ownGap[s] as number) + Math.sqrt(rx * rx + ry * ry) * turn + flat > 0) {
        ways++;
        which = -1 - s;
      }
    }
    if (ways === 0) return -1;
    if (ways > 1) continue;
    if (which >= 0) keepNormal(o, n, which, x, y, cos, sin, a, b);
    else keepOwn(o, n, -1 - which, x, y, cos, sin);
    n++;
  }
  return n;
}

/** Takes down an obstacle's side `k` as the n-th. Its gap bends with the piece's reach at most. */
function keepNormal(
  { nx, ny, off }: Obstacles,
  n: number,
  k: number,
  x: number,
  y: number,
  cos: number,
  sin: number,
  a: number,
  b: number,
): void {
  const mx = nx[k] as number;
  const my = ny[k] as number;
  const mu = mx * cos + my * sin;
  const mv = my * cos - mx * sin;
  gap[n] = mx * x + my * y - a * Math.abs(mu) - b * Math.abs(mv) - (off[k] as number);
  gx[n] = mx;
  gy[n] = my;
  slope[n] = -a * (mu < 0 ? -mv : mv) + b * (mv < 0 ? -mu : mu);
  bend[n] = Math.sqrt(a * a + b * b);
  turning[n] = 0;
}

/** Takes down the piece's own side `s` as the n-th, by the obstacle's corner nearest to it: that turns with the piece. */
function keepOwn(
  { x: px, y: py }: Obstacles,
  n: number,
  s: number,
  x: number,
  y: number,
  cos: number,
  sin: number,
): void {
  const q = corner[s] as number;
  const sign = s === 0 || s === 2 ? -1 : 1;
  const rx = (px[q] as number) - x;
  const ry = (py[q] as number) - y;
  gap[n] = ownGap[s] as number;
  gx[n] = s < 2 ? sign * cos : -sign * sin;
  gy[n] = s < 2 ? sign * sin : sign * cos;
  slope[n] = s < 2 ? -sign * (ry * cos - rx * sin) : sign * (rx * cos + ry * sin);
  bend[n] = Math.sqrt(rx * rx + ry * ry);
  turning[n] = 1;
}

function own(s: number, g: number, k: number): void {
  ownGap[s] = g;
  corner[s] = k;
}

/** Whether weights on three sides (one may be 0) leave no pose that misses all: their sum of gaps is below 0 over the whole cell. */
function closed(
  i: number,
  j: number,
  k: number,
  wi: number,
  wj: number,
  wk: number,
  flat: number,
  turn: number,
): boolean {
  const of = (v: Float64Array | Uint8Array): number =>
    wi * (v[i] as number) + wj * (v[j] as number) + wk * (v[k] as number);
  const sum = of(gap);
  if (sum >= 0) return false;
  const rx = of(gx);
  const ry = of(gy);
  const left = (Math.sqrt(rx * rx + ry * ry) + of(turning) * turn) * flat;
  return sum + Math.abs(of(slope)) * turn + 0.5 * of(bend) * turn * turn + left < -1e-9;
}

/**
 * Whether every pose within `flat` m of the middle and `turn` radians of the turn touches: one obstacle that cannot be missed,
 * or two or three that cannot be missed together, by weights on their gaps whose sum is negative whatever the pose
 * (a certificate after Farkas; what is not linear in it is bounded by the bend).
 */
export function jammed(
  o: Obstacles,
  x: number,
  y: number,
  cos: number,
  sin: number,
  a: number,
  b: number,
  flat: number,
  turn: number,
): boolean {
  const n = sides(o, x, y, cos, sin, a, b, flat, turn);
  if (n < 0) return true;
  for (let i = 0; i < n; i++)
    for (let j = i + 1; j < n; j++) {
      if (closed(i, j, j, 0.5, 0.5, 0, flat, turn)) return true;
      const wk = (gx[i] as number) * (gy[j] as number) - (gy[i] as number) * (gx[j] as number);
      for (let k = j + 1; k < n; k++) {
        const wi = (gx[j] as number) * (gy[k] as number) - (gy[j] as number) * (gx[k] as number);
        const wj = (gx[k] as number) * (gy[i] as number) - (gy[k] as number) * (gx[i] as number);
        const sum = wi + wj + wk;
        if (!((wi >= 0 && wj >= 0 && wk >= 0) || (wi <= 0 && wj <= 0 && wk <= 0)) || sum === 0) continue;
        if (closed(i, j, k, wi / sum, wj / sum, wk / sum, flat, turn)) return true;
      }
    }
  return false;
}
