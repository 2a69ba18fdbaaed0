/** Of velocity pressure by height up to 4.6 m, by how open the land is. Source: `lineset.wind`. */
export const exposures = { town: 0.57, open: 0.85, shore: 1.03 } as const;

/** Pa of wind at `speed` m/s. Source: `lineset.wind`. */
export const windPressure = (speed: number, exposure: number, direction = 0.85): number =>
  0.613 * exposure * direction * speed * speed;

/** N on a box of `area` m². Source: `lineset.wind`. */
export const windForce = (pressure: number, area: number, gust = 0.85, shape = 1.3): number =>
  pressure * gust * shape * area;

const gravity = 9.80665;

/** N of uplift of the windward feet together: a stand whose feet are `apart` m, pushed at `height` m. Never below 0. */
export function upliftOf(force: number, height: number, mass: number, apart: number): number {
  const turning = force * height;
  const resisting = (mass * gravity * apart) / 2;
  return Math.max(0, (turning - resisting) / apart);
}

/** N of pull in each top bolt, and of shear in each of four: a unit on two brackets, its weight `out` m from the wall. */
export function bracketBolts(
  mass: number,
  out: number,
  apart: number,
  wind: { readonly force: number; readonly arm: number } = { force: 0, arm: 0 },
): { readonly pull: number; readonly shear: number } {
  const turning = mass * gravity * out + wind.force * wind.arm;
  return { pull: turning / apart / 2, shear: (mass * gravity) / 4 };
}
