/** A corner of a plan outline, m: across the plan, up the plan. */
export type Corner = readonly [number, number];

/** Two sides of an outline that meet where they should not, by the number of the corner each begins at, and where. */
export type Crossing = { readonly sides: readonly [number, number]; readonly at: Corner };

/** m² inside corners in order round, either way about, by the sum of trapezoids; wrong where sides cross. */
export const areaOfOutline = (corners: readonly Corner[]): number =>
  Math.abs(sidesOf(corners).reduce((sum, [a, b]) => sum + (a[0] - b[0]) * (a[1] + b[1]), 0)) / 2;

/** m² of a slip in a corner's position that still counts as none. */
const slack = 1e-9;

/** The first two sides, neither next to the other, that cross or touch; undefined where the outline is simple. */
export function crossingOf(corners: readonly Corner[]): Crossing | undefined {
  const sides = sidesOf(corners);
  for (const [i, one] of sides.entries())
    for (const [j, other] of sides.entries()) {
      const apart = j > i + 1 && !(i === 0 && j === sides.length - 1);
      const at = apart ? meeting(one, other) : undefined;
      if (at) return { sides: [i, j], at };
    }
  return undefined;
}

/** The area an outline stands for; undefined where it stands for none: fewer than three corners, no area, or crossed. */
export function usableArea(corners: readonly Corner[] | undefined): number | undefined {
  if (!corners || corners.length < 3 || crossingOf(corners)) return undefined;
  const area = areaOfOutline(corners);
  return area > slack ? area : undefined;
}

type Side = readonly [Corner, Corner];

const sidesOf = (corners: readonly Corner[]): Side[] =>
  corners.map((from, i) => [from, corners[(i + 1) % corners.length] ?? from]);

/** Twice the area of a triangle, positive to the left; a slip counts as on the line. */
function leftOf([a, b]: Side, c: Corner): number {
  const twice = (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);
  return Math.abs(twice) < slack ? 0 : twice;
}

function meeting(one: Side, other: Side): Corner | undefined {
  const [p, q] = [leftOf(one, other[0]), leftOf(one, other[1])];
  const [r, s] = [leftOf(other, one[0]), leftOf(other, one[1])];
  if (p * q < 0 && r * s < 0) {
    const t = r / (r - s);
    return [one[0][0] + t * (one[1][0] - one[0][0]), one[0][1] + t * (one[1][1] - one[0][1])];
  }
  const touching = [
    ...other.filter((c) => leftOf(one, c) === 0 && beside(one, c)),
    ...one.filter((c) => leftOf(other, c) === 0 && beside(other, c)),
  ];
  return touching[0];
}

/** Whether a spot on a side's line lies between its ends. */
const beside = ([a, b]: Side, c: Corner): boolean => {
  const along = (c[0] - a[0]) * (b[0] - a[0]) + (c[1] - a[1]) * (b[1] - a[1]);
  return along >= -slack && along <= (b[0] - a[0]) ** 2 + (b[1] - a[1]) ** 2 + slack;
};
