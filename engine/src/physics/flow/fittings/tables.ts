import type { LossTable } from './table.ts';

// Round numbers of published tables. Standing of each source: see `sources` of the trade and validation/fittings.
const smacna = 'flow.fittings';
const table = (id: string, input: string, points: LossTable['points'], at = 'duct', source = smacna): LossTable => ({
  id,
  input,
  points,
  at,
  source,
});

const ratio = 'centre-line radius over diameter';

/** Round smooth bends of 90 degrees by r/D (14-10A, CD3-1). */
export const roundSmooth = table('round smooth', ratio, [
  [0.5, 0.71],
  [0.75, 0.33],
  [1, 0.22],
  [1.5, 0.15],
  [2, 0.13],
  [2.5, 0.12],
]);

/** What a bend of another angle takes of the one of 90 degrees. */
export const angleFactor = table('angle factor', 'angle of the bend', [
  [0, 0],
  [20, 0.31],
  [30, 0.45],
  [45, 0.6],
  [60, 0.78],
  [75, 0.9],
  [90, 1],
  [110, 1.13],
  [130, 1.2],
  [150, 1.28],
  [180, 1.4],
]);

/** Round bends of 90 degrees in pieces, by r/D (14-10B). */
export const roundPieces = {
  3: table('round, 3 pieces', ratio, [
    [0.75, 0.54],
    [1, 0.42],
    [1.5, 0.34],
    [2, 0.33],
  ]),
  4: table('round, 4 pieces', ratio, [
    [0.75, 0.5],
    [1, 0.37],
    [1.5, 0.27],
    [2, 0.24],
  ]),
  5: table('round, 5 pieces', ratio, [
    [0.75, 0.46],
    [1, 0.33],
    [1.5, 0.24],
    [2, 0.19],
  ]),
} as const;

/** Round mitred bends without vanes, by angle (14-10C). */
export const roundMitre = table('round mitre', 'angle of the bend', [
  [30, 0.16],
  [45, 0.34],
  [60, 0.55],
  [90, 1.2],
]);

/** Rectangular mitred bends as high as wide, without vanes, by angle (14-10D; 0 at 0). */
export const mitreByAngle = table('rectangular mitre by angle', 'angle of the bend', [
  [0, 0],
  [20, 0.07],
  [30, 0.16],
  [45, 0.34],
  [60, 0.55],
  [75, 0.81],
  [90, 1.2],
]);

/** Rectangular smooth bends of 90 degrees, height as width, by centre-line radius over width (14-10F). */
export const rectangularSmooth = table('rectangular smooth', 'centre-line radius over width', [
  [0.5, 1.2],
  [0.75, 0.44],
  [1, 0.21],
  [1.5, 0.17],
  [2, 0.15],
]);

/** Rectangular mitred bends of 90 degrees without vanes, by height over width (14-10D). */
export const rectangularMitre = table('rectangular mitre', 'height over width', [
  [0.25, 1.3],
  [0.5, 1.3],
  [1, 1.2],
  [2, 1.1],
  [4, 0.92],
]);

/** Round butterfly dampers by how far they are turned from open (14-18A). */
export const butterfly = table('butterfly damper', 'angle from open', [
  [0, 0.2],
  [10, 0.52],
  [20, 1.5],
  [30, 4.5],
  [40, 11],
  [50, 29],
  [60, 108],
]);

/** All tables, for whoever checks them. */
export const lossTables: readonly LossTable[] = [
  roundSmooth,
  angleFactor,
  ...Object.values(roundPieces),
  roundMitre,
  mitreByAngle,
  rectangularSmooth,
  rectangularMitre,
  butterfly,
];
