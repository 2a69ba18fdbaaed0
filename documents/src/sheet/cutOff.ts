/** A spot on a sheet, mm. */
type Spot = readonly [number, number];

/**
 * What of a polygon lies within a rectangle, by Sutherland and Hodgman (1974): cut off at one side after the other. Viewers
 * and printers differ in how they clip; a shape that ends at the frame needs none of it. Empty where nothing lies within.
 */
export function cutOff(polygon: readonly Spot[], [x0, y0, x1, y1]: readonly [number, number, number, number]): Spot[] {
  const sides: readonly (readonly [axis: 0 | 1, at: number, sign: 1 | -1])[] = [
    [0, x0, 1],
    [0, x1, -1],
    [1, y0, 1],
    [1, y1, -1],
  ];
  return sides.reduce<Spot[]>(
    (left, [axis, at, sign]) => {
      const within = (p: Spot): boolean => sign * (p[axis] - at) >= 0;
      return left.flatMap((to, i) => {
        const from = left.at(i - 1) ?? to;
        const crossing = within(from) === within(to) ? [] : [between(from, to, axis, at)];
        return within(to) ? [...crossing, to] : crossing;
      });
    },
    [...polygon],
  );
}

/** Where a line meets a side. */
function between(from: Spot, to: Spot, axis: 0 | 1, at: number): Spot {
  const share = (at - from[axis]) / (to[axis] - from[axis]);
  const other = from[1 - axis] as number;
  const there = other + share * ((to[1 - axis] as number) - other);
  return axis === 0 ? [at, there] : [there, at];
}
