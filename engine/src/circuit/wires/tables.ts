import { inch } from '../../physics/exact.ts';

/**
 * The published tables that the wires are chosen by, all in one place. A: amperes. Columns are the temperature, °C, that
 * a conductor's insulation (or a terminal) may reach.
 */
export const columns = [60, 75, 90] as const;
export type Column = (typeof columns)[number];

export type Metal = 'copper' | 'aluminium';

/** Gauges from thin to thick, `-0` for 1/0 and on: `n` of the gauge formula, and A in each column at 30 °C. */
export type TableRow = { readonly name: string; readonly n: number; readonly ampacity: readonly number[] };

const row = (name: string, n: number, ...ampacity: readonly number[]): TableRow => ({ name, n, ampacity });

/**
 * Ampacity of not more than three current-carrying conductors in one cable or pipe, in air of 30 °C. Copper source:
 * `circuit.ampacity`. Aluminium, from memory: `circuit.ampacity-aluminium`; it begins at 8 AWG, the thinnest sold for it.
 */
export const ampacityTable: Readonly<Record<Metal, readonly TableRow[]>> = {
  copper: [
    row('14', 14, 15, 20, 25),
    row('12', 12, 20, 25, 30),
    row('10', 10, 30, 35, 40),
    row('8', 8, 40, 50, 55),
    row('6', 6, 55, 65, 75),
    row('4', 4, 70, 85, 95),
    row('3', 3, 85, 100, 115),
    row('2', 2, 95, 115, 130),
    row('1', 1, 110, 130, 145),
    row('1/0', 0, 125, 150, 170),
  ],
  aluminium: [
    row('8', 8, 35, 40, 45),
    row('6', 6, 40, 50, 55),
    row('4', 4, 55, 65, 75),
    row('3', 3, 65, 75, 85),
    row('2', 2, 75, 90, 100),
    row('1', 1, 85, 100, 115),
    row('1/0', 0, 100, 120, 135),
  ],
};

/** Factors by the hottest air, each row up to and including `upTo` °C; a column without a factor may not be used there. Source: `circuit.ambient`. */
export const ambientFactors: readonly { readonly upTo: number; readonly factors: readonly (number | undefined)[] }[] = [
  { upTo: 25, factors: [1.08, 1.05, 1.04] },
  { upTo: 30, factors: [1, 1, 1] },
  { upTo: 35, factors: [0.91, 0.94, 0.96] },
  { upTo: 40, factors: [0.82, 0.88, 0.91] },
  { upTo: 45, factors: [0.71, 0.82, 0.87] },
  { upTo: 50, factors: [0.58, 0.75, 0.82] },
  { upTo: 55, factors: [0.41, 0.67, 0.76] },
  { upTo: 60, factors: [undefined, 0.58, 0.71] },
  { upTo: 65, factors: [undefined, 0.47, 0.65] },
  { upTo: 70, factors: [undefined, 0.33, 0.58] },
];

/** Factors by how many current-carrying conductors share a cable, pipe or bundle. Source: `circuit.together`. */
export const togetherFactors: readonly { readonly upTo: number; readonly factor: number }[] = [
  { upTo: 3, factor: 1 },
  { upTo: 6, factor: 0.8 },
  { upTo: 9, factor: 0.7 },
  { upTo: 20, factor: 0.5 },
  { upTo: 30, factor: 0.45 },
  { upTo: 40, factor: 0.4 },
];

/** K that the sun adds to the air in a pipe lying on a roof. Source: `circuit.roof`. */
export const roofSun = 33;

/** mm² over the insulation of single conductors for conduit, printed as square inches. Source: `circuit.fill`. */
export const insulatedAreas: readonly { readonly n: number; readonly area: number }[] = (
  [
    [14, 0.0097],
    [12, 0.0133],
    [10, 0.0211],
    [8, 0.0366],
    [6, 0.0507],
    [4, 0.0824],
    [3, 0.0973],
    [2, 0.1158],
    [1, 0.1562],
    [0, 0.1855],
  ] as const
).map(([n, squareInches]) => ({ n, area: squareInches * 645.16 }));

/** A pipe as it is sold: its trade size, in inches, and what it measures inside, m. */
export type Pipe = { readonly name: string; readonly diameter: number };

/** Thin-walled metal tubing, printed as inches inside. Source: `circuit.fill`. */
export const pipes: readonly Pipe[] = (
  [
    ['1/2', 0.622],
    ['3/4', 0.824],
    ['1', 1.049],
    ['1 1/4', 1.38],
    ['1 1/2', 1.61],
  ] as const
).map(([name, inches]) => ({ name, diameter: inches * inch }));

/** Standard sizes of breakers and fuses, A. Source: `circuit.standard-sizes`. */
export const standardSizes: readonly number[] = [15, 20, 25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100];

/** Sizes in which disconnects are sold, A. Common practice. */
export const disconnectSizes: readonly number[] = [30, 60, 100, 200];

/** Grounding conductor by the protection ahead of it, A up to and including; `n` of the gauge. Sources: `circuit.grounding`, `circuit.grounding-aluminium`. */
export const groundingTable: Readonly<Record<Metal, readonly { readonly upTo: number; readonly n: number }[]>> = {
  copper: [
    { upTo: 15, n: 14 },
    { upTo: 20, n: 12 },
    { upTo: 60, n: 10 },
    { upTo: 100, n: 8 },
    { upTo: 200, n: 6 },
  ],
  aluminium: [
    { upTo: 15, n: 12 },
    { upTo: 20, n: 10 },
    { upTo: 60, n: 8 },
    { upTo: 100, n: 6 },
    { upTo: 200, n: 4 },
  ],
};

/** Ω mm²/m at 20 °C, and per K. Sources: `circuit.resistance`, `circuit.resistance-aluminium`. */
export const metals: Readonly<Record<Metal, { readonly resistivity: number; readonly perKelvin: number }>> = {
  copper: { resistivity: 1 / 58, perKelvin: 0.00393 },
  aluminium: { resistivity: 1 / 35.4, perKelvin: 0.00403 },
};
