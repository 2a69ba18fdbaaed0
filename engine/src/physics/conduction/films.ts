/** Which way the heat goes through a construction. */
export type HeatDirection = 'up' | 'horizontal' | 'down';

/** Surface resistances, m²K/W. A sheltered outer face counts as an inner one. Source: `iso-6946.films` (from memory). */
export const insideFilm: Readonly<Record<HeatDirection, number>> = { up: 0.1, horizontal: 0.13, down: 0.17 };
export const outsideFilm = 0.04;

/** Unventilated air layers of high emittance, m²K/W by thickness in m. Source: `iso-6946.air-layers` (from memory). */
const thickness = [0, 0.005, 0.007, 0.01, 0.015, 0.025, 0.05, 0.1, 0.3];
const resistance: Readonly<Record<HeatDirection, readonly number[]>> = {
  up: [0, 0.11, 0.13, 0.15, 0.16, 0.16, 0.16, 0.16, 0.16],
  horizontal: [0, 0.11, 0.13, 0.15, 0.17, 0.18, 0.18, 0.18, 0.18],
  down: [0, 0.11, 0.13, 0.15, 0.17, 0.19, 0.21, 0.22, 0.23],
};

/** Resistance of an air layer, interpolated between the table's rows; a thicker one counts as 0.3 m. */
export function airLayer(metres: number, direction: HeatDirection): number {
  const row = resistance[direction];
  const last = row.at(-1) ?? 0;
  for (let i = 1; i < thickness.length; i++) {
    const [x0 = 0, x1 = 0] = [thickness[i - 1], thickness[i]];
    if (metres > x1) continue;
    const [r0 = 0, r1 = 0] = [row[i - 1], row[i]];
    return r0 + ((r1 - r0) * Math.max(0, metres - x0)) / (x1 - x0);
  }
  return last;
}
