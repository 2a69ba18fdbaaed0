// Source: the revised lifting equation, and ropes over sheaves. See README.md.
import {
  advantage,
  capstan,
  frequencyMultiplier,
  gravity,
  hoist,
  inchForm,
  type Lift,
  multipliers,
  togetherShare,
  weightLimit,
} from '@kneewall/engine/access';
import type { Row } from '../src/row.ts';
import { check, pound } from './check.ts';

const plain: Lift = { reach: 25, height: 75, travel: 25, twist: 0, perMinute: 0.2, hours: 1, coupling: 'good' };
const press = (height: number): Lift => ({
  ...plain,
  reach: 23,
  height,
  travel: 49,
  coupling: 'fair',
});

/** The manual's example, in pounds and inches; it multiplies shares of two digits. */
const manual = (): Row[] =>
  (
    [
      [15, [0.44, 0.89, 0.86, 1, 1, 0.95], 16.3, 2.7, 16.017, 2.747],
      [64, [0.44, 0.75, 0.86, 1, 1, 1], 14.5, 3, 14.153, 3.109],
    ] as const
  ).flatMap(([height, shares, limit, index, exactLimit, exactIndex]) => {
    const name = `manual's first example, hands ${height} in up`;
    const found = multipliers(press(height), inchForm);
    const ours = 51 * Object.values(found).reduce((product, m) => product * m, 1);
    // The manual's table prints 0.44 where 10/23 is 0.435.
    const digits = Object.values({ ...found, HM: shares[0] }).map((m) => Math.round(100 * m) / 100);
    const rounded = 51 * digits.reduce((product, m) => product * m, 1);
    return [
      ...(['HM', 'VM', 'DM', 'AM', 'FM', 'CM'] as const).map((m, i) =>
        check(name, m, '', shares[i] ?? Number.NaN, 0.006, found[m], 'from memory'),
      ),
      check(name, 'limit, of rounded shares', 'lb', limit, 0.1, rounded, 'from memory'),
      check(name, 'index, of rounded shares', '', index, 0.1, 44 / rounded, 'from memory'),
      check(name, 'limit', 'lb', exactLimit, 0.001, ours),
      check(name, 'index', '', exactIndex, 0.001, 44 / ours),
    ];
  });

const limits = (): Row[] => [
  check('ideal lift', 'limit', 'kg', 23, 0, weightLimit(plain)),
  check(
    '40, 30, 120 cm, 30°',
    'limit',
    'kg',
    8.60752,
    1e-5,
    weightLimit({ reach: 40, height: 30, travel: 120, twist: 30, perMinute: 1, hours: 1, coupling: 'fair' }),
  ),
  check(
    '50, 150, 100 cm',
    'limit',
    'kg',
    7.70931,
    1e-5,
    weightLimit({ ...plain, reach: 50, height: 150, travel: 100 }),
  ),
  check(
    '63, 0, 175 cm',
    'limit',
    'kg',
    5.38388,
    1e-5,
    weightLimit({ ...plain, reach: 63, height: 0, travel: 175, coupling: 'poor' }),
  ),
  check('beyond 63 cm', 'limit', 'kg', 0, 0, weightLimit({ ...plain, reach: 63.1 })),
  check('two together', 'share', '', 2 / 3, 1e-12, togetherShare(2), 'from memory'),
  check('three together', 'share', '', 1 / 2, 1e-12, togetherShare(3), 'from memory'),
];

// lifts a minute; up to 1 h low, high; 1 to 2 h low, high; 2 to 8 h low, high
const often: readonly (readonly number[])[] = [
  [0.2, 1, 1, 0.95, 0.95, 0.85, 0.85],
  [0.5, 0.97, 0.97, 0.92, 0.92, 0.81, 0.81],
  [1, 0.94, 0.94, 0.88, 0.88, 0.75, 0.75],
  [2, 0.91, 0.91, 0.84, 0.84, 0.65, 0.65],
  [3, 0.88, 0.88, 0.79, 0.79, 0.55, 0.55],
  [4, 0.84, 0.84, 0.72, 0.72, 0.45, 0.45],
  [5, 0.8, 0.8, 0.6, 0.6, 0.35, 0.35],
  [6, 0.75, 0.75, 0.5, 0.5, 0.27, 0.27],
  [7, 0.7, 0.7, 0.42, 0.42, 0.22, 0.22],
  [8, 0.6, 0.6, 0.35, 0.35, 0.18, 0.18],
  [9, 0.52, 0.52, 0.3, 0.3, 0, 0.15],
  [10, 0.45, 0.45, 0.26, 0.26, 0, 0.13],
  [11, 0.41, 0.41, 0, 0.23, 0, 0],
  [12, 0.37, 0.37, 0, 0.21, 0, 0],
  [13, 0, 0.34, 0, 0, 0, 0],
  [14, 0, 0.31, 0, 0, 0, 0],
  [15, 0, 0.28, 0, 0, 0, 0],
];
const frequencies = (): Row[] =>
  often.flatMap(([perMinute = 0, ...shares]) =>
    ([1, 2, 8] as const).flatMap((hours, i) =>
      [30, 75].map((height, j) =>
        check(
          `${perMinute} lifts a minute, ${hours} h, hands ${height} cm up`,
          'FM',
          '',
          shares[2 * i + j] ?? Number.NaN,
          0,
          frequencyMultiplier(perMinute, hours, height < 75),
          hours === 1 || (hours === 2 && perMinute <= 3) ? 'looked up' : 'from memory',
        ),
      ),
    ),
  );

const ropes = (): Row[] => [
  ...(
    [
      [2, 0.95, 1.95, 1.8525, 317.624, 906.02],
      [3, 0.95, 2.8525, 2.709875, 217.131, 805.53],
      [4, 0.95, 3.709875, 3.52438125, 166.951, 755.35],
      [4, 0.9, 3.439, 3.0951, 190.107, 778.51],
      [2, 0.8, 1.8, 1.44, 408.61, 997.01],
      [6, 0.97, 5.5675998, 5.4005718, 108.951, 697.35],
    ] as const
  ).flatMap(([parts, sheave, bare, led, pull, anchor]) => {
    const name = `${parts} parts, sheaves of ${sheave}`;
    const found = hoist(60, { parts, sheave, lead: true });
    return [
      check(name, 'advantage', '', bare, 1e-6, advantage({ parts, sheave, lead: false })),
      check(name, 'advantage with a lead sheave', '', led, 1e-6, advantage({ parts, sheave, lead: true })),
      check(name, 'pull for 60 kg', 'N', pull, 0.001, found.pull),
      check(name, 'anchor', 'N', anchor, 0.01, found.anchor),
    ];
  }),
  check('half a turn, 0.3', 'capstan', '', 2.566332, 1e-6, capstan(0.3, 0.5)),
  check('one turn, 0.3', 'capstan', '', 6.586062, 1e-6, capstan(0.3, 1)),
  check('one and a half turns, 0.25', 'capstan', '', 10.550724, 1e-6, capstan(0.25, 1.5)),
  check('quarter turn, 0.15', 'capstan', '', 1.265693, 1e-6, capstan(0.15, 0.25)),
  check(
    'one fixed sheave without friction',
    'anchor over load',
    '',
    2,
    1e-12,
    hoist(60, { parts: 1, sheave: 1, lead: true }).anchor / (60 * gravity),
  ),
];

/** Pounds by the equation's own kilograms, so that both forms agree. */
const pounds = (): Row[] => [check('load constant', 'in pounds', 'lb', 51, 0.5, 23 / pound, 'looked up')];

export const liftingRows = (): Row[] => [...manual(), ...limits(), ...frequencies(), ...ropes(), ...pounds()];
