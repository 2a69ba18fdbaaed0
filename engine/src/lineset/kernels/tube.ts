import { inch } from '../../physics/exact.ts';

/** Copper tube as it is sold for refrigerant: outer diameter and wall, m. Source: `lineset.tube`. */
export type Tube = { readonly name: string; readonly outer: number; readonly wall: number };

const tube = (name: string, outer: number, wall: number): Tube => ({ name, outer: outer * inch, wall: wall * inch });

/** Sizes in coils. Source: `lineset.tube`. */
export const tubes: readonly Tube[] = [
  tube('1/4', 0.25, 0.03),
  tube('3/8', 0.375, 0.032),
  tube('1/2', 0.5, 0.032),
  tube('5/8', 0.625, 0.035),
  tube('3/4', 0.75, 0.035),
  tube('7/8', 0.875, 0.045),
];

/** kg/m³ of copper. */
const copper = 8940;

/** m² inside a tube. */
export function insideOf({ outer, wall }: Tube): number {
  const inner = outer - 2 * wall;
  return (Math.PI / 4) * inner * inner;
}

/** kg of copper in a metre. */
export const massOf = ({ outer, wall }: Tube): number => Math.PI * (outer - wall) * wall * copper;

/** m/s of `flow` kg/s at `density` kg/m³ in a tube. */
export const speedIn = (tube: Tube, flow: number, density: number): number => flow / (density * insideOf(tube));

/** Pa that a column of liquid of `density` kg/m³ makes over `height` m. */
export const columnPressure = (density: number, height: number): number => density * 9.80665 * height;
