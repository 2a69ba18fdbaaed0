/**
 * A right-angled bend or any other: thickness and inside radius in m (or any one unit), the angle turned in degrees, and
 * where the neutral line lies as a share of the thickness from the inside.
 */
export type Bend = {
  readonly thickness: number;
  readonly radius: number;
  readonly neutral: number;
  readonly angle: number;
};

/** Length along the neutral line within the bend: angle (radius + neutral x thickness). Source: `cutting.bend`. */
export const bendAllowance = ({ thickness, radius, neutral, angle }: Bend): number =>
  (angle * Math.PI * (radius + neutral * thickness)) / 180;

/** What two outside lengths to the corner are more than the flat piece: 2 (radius + thickness) tan(angle / 2) - allowance. */
export const bendDeduction = (b: Bend): number =>
  2 * (b.radius + b.thickness) * Math.tan((b.angle * Math.PI) / 360) - bendAllowance(b);

/** Steel sheet: kg/m², at 7850 kg/m³, without its zinc. */
export const steelPerArea = (thickness: number): number => 7850 * thickness;
