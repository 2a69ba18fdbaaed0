import { saturationPressure, saturationSlope } from './saturation.ts';

/** Where the branches over ice and water meet lies a knot, °C; pieces are 1 K long, from -99.99 to 200.01. */
const below = 100;
const count = 300;
const knot = (i: number): number => i - below + 0.01;

/**
 * Saturation pressure over each piece as a cubic with its values and slopes at both ends.
 * Within 5e-6 of the formula. Four coefficients each. Laid out when it is first asked for.
 */
let pieces: Float64Array | undefined;

function layOut(): Float64Array {
  const made = new Float64Array(4 * count);
  for (let i = 0; i < count; i++) {
    // Just short of the end, so that the piece below the triple point ends as ice.
    const [a, b] = [knot(i), knot(i + 1) - 1e-9];
    const [p, q] = [saturationPressure(a), saturationPressure(b)];
    const [rise, end] = [p * saturationSlope(a), q * saturationSlope(b)];
    made.set([p, rise, 3 * (q - p) - 2 * rise - end, 2 * (p - q) + rise + end], 4 * i);
  }
  return made;
}

/** Pa, and Pa/K, as near as a search needs them that ends by the formula itself. */
export const near = new Float64Array(2);

/** Fills `near`; false where the table does not reach. */
export function lookNear(t: number): boolean {
  const x = t + (below - 0.01);
  if (!(x >= 0 && x < count)) return false;
  pieces ??= layOut();
  const i = Math.floor(x);
  const [s, c] = [x - i, 4 * i];
  const rise = pieces[c + 1] ?? 0;
  const square = pieces[c + 2] ?? 0;
  const cube = pieces[c + 3] ?? 0;
  near[0] = (pieces[c] ?? 0) + s * (rise + s * (square + s * cube));
  near[1] = rise + s * (2 * square + 3 * s * cube);
  return true;
}
