/** A point of a way through the house, m: across the plan, up the plan, above the floor. */
export type WayPoint = readonly [number, number, number];

/** m along a way of points, rises included; 0 for fewer than two points. */
export const lengthOfWay = (points: readonly WayPoint[]): number =>
  stretchesOf(points).reduce((sum, v) => sum + Math.hypot(...v), 0);

/** Degrees below which nobody would call it a bend: a tape laid by hand is not straighter. */
const bendLeast = 10;

/**
 * The bends of a way, in order, degrees each; rises turn as well. Points on top of each other make no bend. What turns
 * by less than 10° (our own choice, no source) is straight.
 */
export function bendsOfWay(points: readonly WayPoint[]): number[] {
  const stretches = stretchesOf(points).filter((v) => Math.hypot(...v) > 0);
  return stretches
    .slice(1)
    .map((to, i) => turned(stretches[i] ?? to, to))
    .filter((angle) => angle >= bendLeast);
}

const stretchesOf = (points: readonly WayPoint[]): WayPoint[] =>
  points.slice(1).map((to, i): WayPoint => {
    const from = points[i] ?? to;
    return [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  });

/** Degrees between two directions, by the tangent, which is exact near 0 and 180 as well. */
function turned(a: WayPoint, b: WayPoint): number {
  const dot = a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  const cross = Math.hypot(a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]);
  return (Math.atan2(cross, dot) * 180) / Math.PI;
}
