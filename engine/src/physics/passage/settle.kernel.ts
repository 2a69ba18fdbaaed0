import type { Obstacles } from './obstacles.ts';

/** The pose being moved: x, y. Its turn stays. */
export type Place = Float64Array;

/**
 * Moves a rectangle, its turn kept, out of the obstacles one after the other, each time the shortest way that gives `margin` m
 * to it, round by round, until none is nearer or `rounds` are over: where there is room between several it is found so.
 * What comes out is only a proposal, to be replayed.
 */
export function settle(
  o: Obstacles,
  at: Place,
  cos: number,
  sin: number,
  a: number,
  b: number,
  margin: number,
  rounds: number,
): void {
  const { starts, x: px, y: py, nx, ny, off } = o;
  const count = starts.length - 1;
  for (let round = 0; round < rounds; round++) {
    let moved = false;
    for (let j = 0; j < count; j++) {
      const x = at[0] as number;
      const y = at[1] as number;
      const u = x * cos + y * sin;
      const v = y * cos - x * sin;
      let gap = Number.NEGATIVE_INFINITY;
      let mx = 0;
      let my = 0;
      let lowU = Number.POSITIVE_INFINITY;
      let highU = Number.NEGATIVE_INFINITY;
      let lowV = Number.POSITIVE_INFINITY;
      let highV = Number.NEGATIVE_INFINITY;
      for (let k = starts[j] as number; k < (starts[j + 1] as number); k++) {
        const ax = nx[k] as number;
        const ay = ny[k] as number;
        const g =
          ax * x + ay * y - a * Math.abs(ax * cos + ay * sin) - b * Math.abs(ay * cos - ax * sin) - (off[k] as number);
        if (g > gap) {
          gap = g;
          mx = ax;
          my = ay;
        }
        const qu = (px[k] as number) * cos + (py[k] as number) * sin;
        const qv = (py[k] as number) * cos - (px[k] as number) * sin;
        if (qu < lowU) lowU = qu;
        if (qu > highU) highU = qu;
        if (qv < lowV) lowV = qv;
        if (qv > highV) highV = qv;
      }
      const gu = lowU - u - a;
      const hu = u - a - highU;
      const gv = lowV - v - b;
      const hv = v - b - highV;
      const own = Math.max(gu, hu, gv, hv);
      if (own > gap) {
        const sign = own === gu || own === gv ? -1 : 1;
        const along = own === gu || own === hu;
        gap = own;
        mx = along ? sign * cos : -sign * sin;
        my = along ? sign * sin : sign * cos;
      }
      if (gap >= margin) continue;
      moved = true;
      at[0] = x + (margin - gap) * mx;
      at[1] = y + (margin - gap) * my;
    }
    if (!moved) return;
  }
}
