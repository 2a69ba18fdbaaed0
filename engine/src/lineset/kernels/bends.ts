/** m of tube in a quarter bend of `radius` m. */
export const quarterBend = (radius: number): number => (Math.PI / 2) * radius;

/** m that a rounded corner saves against two legs that meet in a point. */
export const cornerSaves = (radius: number): number => 2 * radius - quarterBend(radius);

/** m of tube along `legs` m of straight ways that meet at right angles in `corners` corners. */
export const tubeAlong = (legs: number, corners: number, radius: number): number =>
  legs - corners * cornerSaves(radius);
