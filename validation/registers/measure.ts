// Sources: ASHRAE's jet forms, Turner's fountain, CIBSE's grille sound, noise criterion curves, room rules. See README.md.
import {
  criterionCurves,
  dropAt,
  grillePeak,
  grilleSound,
  noiseCriterion,
  octaveBands,
  reachDown,
  roomEffect,
  soundRise,
  throwTo,
} from '@kneewall/engine/physics';
import { type How, row, type ValidationSource } from '../src/row.ts';

const id = 'registers';
const foot = 0.3048;
const fpm = foot / 60;
const cfm = 0.47194745e-3;
const square = (inches: number): number => inches * 0.0254 ** 2;

// K, cfm, open ft², fpm at the end, ft
const throws = [
  [5, 100, 0.25, 50, 20.0],
  [5, 100, 0.25, 100, 10.0],
  [4.5, 150, 0.35, 50, 22.82],
] as const;
// cfm, square inches of all faces, fpm
const faces = [
  [800, 16 * 20, 360],
  [800, 20 * 25, 230.4],
  [1200, 20 * 25, 345.6],
  [1200, 2 * 16 * 25, 216],
] as const;
// The printed table of curves, octave bands 63 to 8000 Hz.
const printed: readonly (readonly [number, readonly number[]])[] = [
  [15, [47, 36, 29, 22, 17, 14, 12, 11]],
  [25, [54, 44, 37, 31, 27, 24, 22, 21]],
  [30, [57, 48, 41, 35, 31, 29, 28, 27]],
  [40, [64, 56, 50, 45, 41, 39, 38, 37]],
  [50, [71, 64, 58, 54, 51, 49, 48, 47]],
  [65, [80, 75, 71, 68, 66, 64, 63, 62]],
];
const classroom = [61, 56, 54, 50, 44, 43, 39, 34];
const jet = { velocity: 2, area: 0.03, excess: 15, room: 20 };

export const source: ValidationSource = {
  id,
  title: 'Registers: faces, throw, warm and cold jets, sound',
  measure: () => [...facesAndThrow(), ...warmAndCold(), ...sound()],
};

const facesAndThrow = () => [
  ...faces.map(([flow, area, expected]) =>
    check(`${flow} cfm on ${area} in²`, 'face velocity', 'fpm', expected, 0.05, (flow * cfm) / square(area) / fpm),
  ),
  check('1 cfm at 300 fpm', 'face', 'in²', 0.48, 1e-4, cfm / (300 * fpm) / square(1)),
  check('1 cfm at 400 fpm', 'face', 'in²', 0.36, 1e-4, cfm / (400 * fpm) / square(1)),
  ...throws.map(([k, flow, area, end, expected]) =>
    check(
      `K ${k}, ${flow} cfm, ${area} ft², to ${end} fpm`,
      'throw',
      'ft',
      expected,
      0.01,
      throwTo(end * fpm, k, (flow * cfm) / (area * foot * foot), area * foot * foot) / foot,
      'from memory',
    ),
  ),
];

// Both from the momentum and buoyancy that leave the opening, worked out apart from the kernels' own forms.
const warmAndCold = () => [
  check('down, 2 m/s, 0.03 m², 15 K warm', 'reach', 'm', 2.1738, 0.011, reachDown(jet), 'from memory'),
  check(
    'level, 2 m/s, 0.03 m², 10 K cold, at 3 m',
    'drop',
    'm',
    0.75099,
    1e-5,
    dropAt(3, { ...jet, excess: -10 }),
    'from memory',
  ),
];

const sound = () => [
  ...printed.flatMap(([nc, levels]) => [
    check(`curve NC-${nc}`, 'criterion', 'NC', nc, 1e-9, noiseCriterion(levels), 'looked up'),
    check(
      `curve NC-${nc}`,
      'largest miss of the printed level',
      'dB',
      0,
      0,
      Math.max(...levels.map((x, i) => Math.abs(x - (criterionCurves.find(([n]) => n === nc)?.[1][i] ?? 0)))),
      'looked up',
    ),
  ]),
  check('classroom of a textbook', 'criterion', 'NC', 46, 0.5, noiseCriterion(classroom), 'looked up'),
  check('1 m², 10 Pa', 'peak power level', 'dB', 40, 1e-9, grillePeak({ area: 1, pressure: 10, velocity: 3 })),
  check(
    '0.04 m², 12 Pa',
    'peak power level',
    'dB',
    28.396,
    0.001,
    grillePeak({ area: 0.04, pressure: 12, velocity: 3 }),
  ),
  check('3.125 m/s in the duct', 'loudest octave', 'Hz', 500, 0, loudestBand(3.125), 'looked up'),
  range('twice the velocity, pressure four times', 'rise of the peak', 'dB', 15.1, 18.1, fourfold(), 'from memory'),
  range('twice the flow', 'rise by the velocity law', 'dB', 15.1, 18.1, soundRise(2, 1), 'from memory'),
  check('15 m², 2.4 m, 0.2 taken up, at 1.5 m', 'room effect', 'dB', -5.1018, 1e-4, roomEffect(bedroom, 1.5)),
];

const bedroom = { floor: 15, height: 2.4, absorption: 0.2 };
const fourfold = (): number =>
  grillePeak({ area: 0.04, pressure: 20, velocity: 4 }) - grillePeak({ area: 0.04, pressure: 5, velocity: 2 });

function loudestBand(velocity: number): number {
  const levels = grilleSound({ area: 0.04, pressure: 10, velocity });
  return octaveBands[levels.indexOf(Math.max(...levels))] ?? 0;
}

function check(
  name: string,
  field: string,
  unit: string,
  expected: number,
  tolerance: number,
  ours: number,
  known: How = 'computed',
) {
  return row({ source: id, case: name, field, unit, expected, tolerance, known }, ours);
}

const range = (name: string, field: string, unit: string, low: number, high: number, ours: number, known: How) =>
  row({ source: id, case: name, field, unit, low, high, tolerance: 0, known }, ours);
