/** Points as the document keeps them, m: two numbers for an outline, a height as third for a way. */
export type Point = readonly number[];
export type Points = readonly Point[];
export type Spot = readonly [number, number];

export const spotOf = (p: Point): Spot => [p[0] ?? 0, p[1] ?? 0];

/** m to which a drawn point is kept: a tenth of a millimetre, so that no dust of a drag gets into the document. */
const kept = (m: number): number => Math.round(m * 1e4) / 1e4 + 0;

export const withPoint = (points: Points, at: number, point: Point): Points => points.with(at, point.map(kept));

/** The point at another spot of the plan, its height as it was. */
export const pointAt = (point: Point, [x, y]: Spot): Point => [x, y, ...point.slice(2)];

export const without = (points: Points, at: number): Points => points.filter((_, i) => i !== at);

/** One more point after another, which then stands at `after + 1`; -1 puts it first. */
export const withNew = (points: Points, after: number, point: Point): Points => [
  ...points.slice(0, after + 1),
  point.map(kept),
  ...points.slice(after + 1),
];

/** A point to put after another: half way to the next; past the end of a way, `step` farther on. */
export function pointAfter(points: Points, after: number, closed: boolean, step: number): Point {
  const from = points[after] ?? [0, 0];
  const next = points[after + 1] ?? (closed ? points[0] : undefined);
  if (next) return from.map((v, i) => (v + (next[i] ?? v)) / 2);
  const before = points[after - 1];
  const [dx, dy] = before ? [(from[0] ?? 0) - (before[0] ?? 0), (from[1] ?? 0) - (before[1] ?? 0)] : [1, 0];
  const long = Math.hypot(dx, dy);
  const way: Spot = long > 0 ? [dx / long, dy / long] : [1, 0];
  return [(from[0] ?? 0) + way[0] * step, (from[1] ?? 0) + way[1] * step, ...from.slice(2)];
}

/** The point after which a new corner at a spot belongs: that of the nearest side within reach, else the last of a way. */
export function placeFor(points: Points, spot: Spot, closed: boolean, reach: number): number {
  const sides = closed && points.length > 2 ? points.length : points.length - 1;
  const far = Array.from({ length: Math.max(0, sides) }, (_, i) =>
    fromSide(spotOf(points[i] ?? []), spotOf(points[(i + 1) % points.length] ?? []), spot),
  );
  const nearest = far.indexOf(Math.min(...far));
  const isNear = nearest >= 0 && (closed || (far[nearest] ?? 0) <= reach);
  return isNear ? nearest : points.length - 1;
}

/** m from a spot to a side between two others. */
function fromSide(a: Spot, b: Spot, c: Spot): number {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const square = dx * dx + dy * dy;
  const t = square === 0 ? 0 : Math.max(0, Math.min(1, ((c[0] - a[0]) * dx + (c[1] - a[1]) * dy) / square));
  return Math.hypot(a[0] + t * dx - c[0], a[1] + t * dy - c[1]);
}
