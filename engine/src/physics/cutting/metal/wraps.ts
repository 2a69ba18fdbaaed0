import { inch } from '../../exact.ts';

/** Flat length of a pipe's blank, m: round the pipe, and what its seam takes. */
export const cylinderBlank = (diameter: number, seam: number): number => Math.PI * diameter + seam;

/** Flat length of a blanket around a round duct by geometry, m: its outer face, and the flap. */
export const roundWrap = (diameter: number, blanket: number, flap: number): number =>
  Math.PI * (diameter + 2 * blanket) + flap;

/** Added to a round duct's girth for a blanket squeezed by a quarter, its 2 in lap within it. From memory: `cutting.wrap`. */
const wrapTable: readonly (readonly [number, number])[] = [
  [1.5 * inch, 9.5 * inch],
  [2 * inch, 12 * inch],
  [3 * inch, 17 * inch],
];

/** Flat length of a blanket by the published allowances, m; nothing between the table's rows. */
export function roundWrapPublished(diameter: number, blanket: number): number | undefined {
  const row = wrapTable.find(([t]) => Math.abs(t - blanket) < 1e-4);
  return row && Math.PI * diameter + row[1];
}
