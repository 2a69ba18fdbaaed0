// Source: published tables of loss coefficients; each row says how it is known. See README.md.
import {
  angleFactor,
  branchLoss,
  butterfly,
  entries,
  exitLoss,
  fittingLoss,
  gradualContraction,
  type LossTable,
  lookUp,
  mitreByAngle,
  narrowingShare,
  rectangularMitre,
  rectangularSmooth,
  roundMitre,
  roundPieces,
  roundSmooth,
  straightRunLoss,
  suddenContraction,
  suddenExpansion,
  wideningShare,
} from '@kneewall/engine/physics';
import { type How, type Row, row, type ValidationSource } from '../src/row.ts';

const id = 'fittings';

type Printed = readonly (readonly [number, number])[];
const zip = (x: readonly number[], y: readonly number[]): Printed => x.map((at, i) => [at, y[i] ?? Number.NaN]);

// name, our table, what is printed, share it may be off
const printed: readonly (readonly [string, LossTable, Printed, number])[] = [
  ['round smooth elbow, r/D', roundSmooth, zip([0.5, 0.75, 1, 1.5, 2, 2.5], [0.71, 0.33, 0.22, 0.15, 0.13, 0.12]), 0.1],
  [
    'angle factor',
    angleFactor,
    zip([0, 20, 30, 45, 60, 75, 90, 110, 130, 150, 180], [0, 0.31, 0.45, 0.6, 0.78, 0.9, 1, 1.13, 1.2, 1.28, 1.4]),
    0.1,
  ],
  ['round, 3 pieces, r/D', roundPieces[3], zip([0.75, 1, 1.5, 2], [0.54, 0.42, 0.34, 0.33]), 0.1],
  ['round, 4 pieces, r/D', roundPieces[4], zip([0.75, 1, 1.5, 2], [0.5, 0.37, 0.27, 0.24]), 0.1],
  ['round, 5 pieces, r/D', roundPieces[5], zip([0.75, 1, 1.5, 2], [0.46, 0.33, 0.24, 0.19]), 0.1],
  ['round mitre, angle', roundMitre, zip([90, 60, 45, 30], [1.2, 0.55, 0.34, 0.16]), 0.1],
  ['rectangular mitre, angle', mitreByAngle, zip([20, 30, 45, 60, 75, 90], [0.07, 0.16, 0.34, 0.55, 0.81, 1.2]), 0.1],
  ['rectangular smooth, r/W', rectangularSmooth, zip([0.5, 0.75, 1, 1.5, 2], [1.2, 0.44, 0.21, 0.17, 0.15]), 0.1],
  ['rectangular mitre, H/W', rectangularMitre, zip([0.25, 0.5, 1, 2, 4], [1.3, 1.3, 1.2, 1.1, 0.92]), 0.1],
  ['butterfly damper, angle', butterfly, zip([0, 10, 20, 30, 40, 50, 60], [0.2, 0.52, 1.5, 4.5, 11, 29, 108]), 0.25],
];

const kind = (name: Parameters<typeof fittingLoss>[0]): number => {
  const looked = fittingLoss(name);
  return looked.ok ? looked.value : Number.NaN;
};

const tables = (): Row[] =>
  printed.flatMap(([name, table, points, share]) =>
    points.map(([x, c]) => {
      const looked = lookUp(table, x);
      const known = table === mitreByAngle ? 'looked up' : 'from memory';
      return point(`${name} ${x}`, c, share * c, looked.ok ? looked.value : Number.NaN, known);
    }),
  );

const ends = (): Row[] => [
  point('entry flush with a wall', 0.5, 0.05, entries.flush, 'from memory'),
  between('entry flush with a wall, a general fluid library has 0.57', 0.45, 0.57, entries.flush, 'looked up'),
  between('entry projecting', 0.9, 1, entries.projecting, 'from memory'),
  point('entry rounded, radius two diameters', 0.03, 0.003, entries.rounded, 'looked up'),
  point('exit into a room', 1, 0.1, exitLoss, 'looked up'),
  point('gradual contraction, 30 to 45 degrees', 0.05, 0.005, gradualContraction, 'from memory'),
  ...zip([0.2, 0.4, 0.5, 0.6, 0.8], [0.64, 0.36, 0.25, 0.16, 0.04]).map(([r, c]) =>
    point(`sudden expansion ${r}`, c, 1e-12, suddenExpansion(r), 'computed'),
  ),
  ...zip([0.2, 0.4, 0.5, 0.6, 0.8], [0.423, 0.341, 0.297, 0.251, 0.15]).map(([r, c]) =>
    point(`sudden contraction ${r}`, c, 0.0006, suddenContraction(r), 'from memory'),
  ),
];

const junctions = (): Row[] => [
  ...zip([1, 0.8, 0.5], [0, 0.016, 0.1]).map(([r, c]) =>
    point(`straight through a tee, velocities ${r}`, c, 1e-9, straightRunLoss(r), 'computed'),
  ),
  point('branch at 90 degrees, velocities 1', 2, 1e-9, branchLoss(1, 90), 'computed'),
  point('branch at 90 degrees, velocities 0.6', 1.36, 1e-9, branchLoss(0.6, 90), 'computed'),
  point('branch at 45 degrees, velocities 1', 0.586, 0.0005, branchLoss(1, 45), 'computed'),
  point('branch at 45 degrees, velocities 0.8', 0.509, 0.0005, branchLoss(0.8, 45), 'computed'),
];

const kinds = (): Row[] => [
  point('elbow as drawn', 0.22, 0.022, kind('elbow-round'), 'from memory'),
  point('tight elbow as drawn', 0.71, 0.071, kind('elbow-round-tight'), 'from memory'),
  point('square rectangular elbow as drawn', 1.2, 0.12, kind('elbow-rectangular'), 'from memory'),
  between('rectangular elbow with vanes', 0.11, 0.15, kind('elbow-rectangular-vaned'), 'from memory'),
  between('collar', 0.5, 0.6, kind('collar'), 'common practice'),
  between('rounded collar', 0.1, 0.25, kind('collar-rounded'), 'common practice'),
  between('boot that turns', 0.8, 1.2, kind('boot-elbow'), 'common practice'),
  between('straight boot', 0.2, 0.5, kind('boot-straight'), 'common practice'),
  between('damper open', 0.1, 0.2, kind('damper'), 'from memory'),
];

// A₁/A₂ and the angle between both sides; on the small duct's velocity. The printed angle is the larger of a rectangle's two.
const narrowings = [15, 60, 90, 120, 150, 180] as const;
const narrowed: readonly (readonly [number, readonly number[]])[] = [
  [2, [0.05, 0.06, 0.12, 0.18, 0.24, 0.26]],
  [4, [0.04, 0.07, 0.17, 0.27, 0.35, 0.41]],
  [6, [0.04, 0.07, 0.18, 0.28, 0.36, 0.42]],
  [10, [0.05, 0.08, 0.19, 0.29, 0.37, 0.43]],
];
const widenings = [16, 20, 30, 45, 60, 90, 120, 180] as const;
const widened: readonly (readonly [number, readonly number[]])[] = [
  [2, [0.18, 0.22, 0.25, 0.29, 0.31, 0.32, 0.33, 0.3]],
  [4, [0.36, 0.43, 0.5, 0.56, 0.61, 0.63, 0.63, 0.63]],
];
/** Idelchik's own polynomial of the area for narrowings, in place of which a sudden one's 0.5 (1 - n)^¾ stands. */
const ofArea = (n: number): number =>
  (0.0125 * n ** 4 - 0.0224 * n ** 3 + 0.00723 * n ** 2 - 0.00444 * n + 0.00745) * (10 * Math.PI + Math.PI ** 3);

const pieces = (): Row[] => [
  ...narrowed.flatMap(([ratio, values]) =>
    values.map((c, i) => {
      const angle = narrowings[i] ?? 0;
      const ours = suddenContraction(1 / ratio) * narrowingShare(angle);
      return point(`narrowing ${ratio} to 1 at ${angle} degrees`, c, 0.1, ours, 'looked up');
    }),
  ),
  ...widened.flatMap(([ratio, values]) =>
    values.map((c, i) => {
      const angle = widenings[i] ?? 0;
      const ours = suddenExpansion(1 / ratio) * wideningShare(angle);
      return point(`widening 1 to ${ratio} at ${angle} degrees`, c, 0.3 * c, ours, 'from memory');
    }),
  ),
  ...[0.1, 0.3, 0.5, 0.8].map((n) =>
    point(`narrowing, the handbook's polynomial of the area ${n}`, ofArea(n), 0.025, suddenContraction(n), 'looked up'),
  ),
];

export const source: ValidationSource = {
  id,
  title: 'Fittings: loss coefficients',
  measure: () => [...tables(), ...ends(), ...junctions(), ...kinds(), ...pieces()],
};

function point(name: string, expected: number, tolerance: number, ours: number, known: How): Row {
  return row({ source: id, case: name, field: 'coefficient', unit: '', expected, tolerance, known }, ours);
}

function between(name: string, low: number, high: number, ours: number, known: How): Row {
  return row({ source: id, case: name, field: 'coefficient', unit: '', low, high, tolerance: 0, known }, ours);
}
