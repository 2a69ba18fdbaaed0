import type { Obstacles } from './obstacles.ts';

/**
 * m between a rectangle (middle x, y; axes by cosine and sine; half sides a, b) and the obstacles, by separating axes over all
 * normals of both: never more than the true distance where they are apart; exactly minus the depth of the deepest obstacle
 * where they overlap. Stops early once it is below `enough`. No input is checked.
 */
export function clearance(
  o: Obstacles,
  x: number,
  y: number,
  cos: number,
  sin: number,
  a: number,
  b: number,
  enough = Number.NEGATIVE_INFINITY,
): number {
  const { starts, x: px, y: py, nx, ny, off } = o;
  const count = starts.length - 1;
  const u = x * cos + y * sin;
  const v = y * cos - x * sin;
  let least = Number.POSITIVE_INFINITY;
  for (let j = 0; j < count; j++) {
    const from = starts[j] as number;
    const to = starts[j + 1] as number;
    let gap = Number.NEGATIVE_INFINITY;
    for (let k = from; k < to; k++) {
      const mx = nx[k] as number;
      const my = ny[k] as number;
      const reach = a * Math.abs(mx * cos + my * sin) + b * Math.abs(my * cos - mx * sin);
      const g = mx * x + my * y - reach - (off[k] as number);
      if (g > gap) gap = g;
    }
    if (gap >= least) continue;
    let lowU = Number.POSITIVE_INFINITY;
    let highU = Number.NEGATIVE_INFINITY;
    let lowV = Number.POSITIVE_INFINITY;
    let highV = Number.NEGATIVE_INFINITY;
    for (let k = from; k < to; k++) {
      const qx = px[k] as number;
      const qy = py[k] as number;
      const qu = qx * cos + qy * sin;
      const qv = qy * cos - qx * sin;
      if (qu < lowU) lowU = qu;
      if (qu > highU) highU = qu;
      if (qv < lowV) lowV = qv;
      if (qv > highV) highV = qv;
    }
    gap = Math.max(gap, lowU - u - a, u - a - highU, lowV - v - b, v - b - highV);
    if (gap < least) {
      least = gap;
      if (least < enough) return least;
    }
  }
  return least;
}
