// Source: standards, a published table and arithmetic computed outside the project. See README.md.
import {
  areaLeast,
  barrierTakes,
  bracketBolts,
  chargeBeyond,
  chargeFree,
  chargeMost,
  chargeToAdd,
  columnPressure,
  cornerSaves,
  detour,
  exposures,
  type Flammable,
  fenceTakes,
  insideOf,
  massOf,
  quarterBend,
  releaseHeights,
  soundAt,
  soundTogether,
  speedIn,
  tubes,
  upliftOf,
  windForce,
  windPressure,
} from '@kneewall/engine/line';
import { checker } from '../src/checker.ts';
import type { Row, ValidationSource } from '../src/row.ts';

const id = 'lineset';
const check = checker(id);

const chargeRows = (): Row[] =>
  (
    [
      [7.5, 13, 20, 110],
      [5, 15, 25, 250],
      [7.5, 6, 20, 0],
    ] as const
  ).map(([covered, length, perMetre, grams]) =>
    check(
      `${length} m, ${covered} m covered, ${perMetre} g/m`,
      'added',
      'g',
      grams,
      1e-9,
      1000 * chargeToAdd(length, covered, perMetre / 1000),
    ),
  );

// name, mL/m, kg/m
const tubing = [
  ['1/4', 18.292, 0.1196],
  ['3/8', 49.009, 0.1989],
  ['1/2', 96.323, 0.2714],
  ['5/8', 156.079, 0.3742],
  ['3/4', 234.302, 0.4534],
  ['7/8', 312.246, 0.6768],
] as const;

const named = (name: string) => {
  const found = tubes.find((t) => t.name === name);
  if (!found) throw new Error(`assert: no tube ${name}`);
  return found;
};

const tubeRows = (): Row[] => [
  ...tubing.flatMap(([name, volume, mass]) => [
    check(`${name} in tube`, 'holds', 'mL/m', volume, 6e-4, 1e6 * insideOf(named(name))),
    check(`${name} in tube`, 'copper', 'kg/m', mass, 6e-5, massOf(named(name))),
  ]),
  check('0.045 kg/s vapour in 5/8', 'speed', 'm/s', 9.611, 0.0096, speedIn(named('5/8'), 0.045, 30)),
  check('0.045 kg/s vapour in 3/4', 'speed', 'm/s', 6.402, 0.0064, speedIn(named('3/4'), 0.045, 30)),
  check('0.045 kg/s liquid in 3/8', 'speed', 'm/s', 0.9665, 0.00097, speedIn(named('3/8'), 0.045, 950)),
  check('950 kg/m³', 'column', 'Pa/m', 9316.3, 0.93, columnPressure(950, 1)),
  check('950 kg/m³, 15 m', 'column', 'kPa', 139.74, 0.014, columnPressure(950, 15) / 1000),
  check('radius of 150 mm', 'quarter bend', 'mm', 235.6, 0.1, 1000 * quarterBend(0.15)),
  check('radius of 150 mm', 'corner saves', 'mm', 64.4, 0.1, 1000 * cornerSaves(0.15)),
];

const r32: Flammable = { group: 'A2L', least: 0.307 };
const r454b: Flammable = { group: 'A2L', least: 0.297 };
const r290: Flammable = { group: 'A3', least: 0.038 };

// The table of a manual by IEC 60335-2-40:2018, clause GG2, R32 at 0.6 m: m², kg.
const printed = [
  [1, 0.138],
  [2, 0.276],
  [3, 0.414],
  [4, 0.553],
  [5, 0.691],
  [6, 0.829],
  [7, 0.907],
  [8, 0.97],
  [9, 1.028],
  [10, 1.084],
  [12, 1.187],
  [15, 1.328],
  [20, 1.533],
  [25, 1.714],
  [30, 1.877],
  [35, 2.028],
  [40, 2.168],
  [45, 2.299],
] as const;
const needs = [
  [1.84, 28.81],
  [1.9, 30.72],
  [2, 34.04],
  [2.1, 37.53],
  [2.2, 41.19],
  [2.3, 45.02],
] as const;

const roomRows = (): Row[] => [
  ...printed.map(([area, mass]) =>
    check(
      `R32, floor, ${area} m²`,
      'charge',
      'kg',
      mass,
      0.001,
      chargeMost(r32, area, releaseHeights.floor),
      'looked up',
    ),
  ),
  ...needs.map(([mass, area]) =>
    check(`R32, floor, ${mass} kg`, 'area', 'm²', area, 0.01, areaLeast(r32, mass, releaseHeights.floor), 'looked up'),
  ),
  check('R32', 'no room too small up to', 'kg', 1.842, 1e-9, chargeFree(r32)),
  check('R454B', 'no room too small up to', 'kg', 1.782, 1e-9, chargeFree(r454b)),
  check('R290', 'no room too small up to', 'kg', 0.152, 1e-9, chargeFree(r290)),
  check('R32', 'area settles it up to', 'kg', 15.964, 1e-9, chargeBeyond(r32)),
  check('R290', 'area settles it up to', 'kg', 0.988, 1e-9, chargeBeyond(r290), 'looked up'),
  check('R290, wall, 0.3 kg', 'area', 'm²', 15.789, 0.01, areaLeast(r290, 0.3, releaseHeights.wall)),
  check('R290, ceiling, 0.3 kg', 'area', 'm²', 10.57, 0.01, areaLeast(r290, 0.3, releaseHeights.ceiling)),
  ...(
    [
      [r32, releaseHeights.wall, 10, 3.2519],
      [r32, releaseHeights.ceiling, 20, 5.6208],
      [r454b, releaseHeights.wall, 40, 6.2401],
      [r290, releaseHeights.floor, 20, 0.1125],
    ] as const
  ).map(([gas, height, area, mass]) =>
    // The straight law governs small rooms; these are beyond it.
    check(`${gas.least} kg/m³, ${height} m, ${area} m²`, 'root law', 'kg', mass, 1e-4, rootOf(gas, area, height)),
  ),
];

/** The charge by the root law alone, read from the area that it asks for. */
function rootOf(gas: Flammable, area: number, height: number): number {
  const one = areaLeast(gas, 1, height);
  return Math.sqrt(area / one);
}

const windRows = (): Row[] => {
  const force = windForce(windPressure(50, exposures.open), 0.8);
  return [
    check('50 m/s, open land', 'pressure', 'Pa', 1107.23, 1.1, windPressure(50, exposures.open)),
    check('50 m/s, open land, 0.8 m²', 'force', 'N', 978.79, 0.98, force),
    check('50 m/s, shore', 'pressure', 'Pa', 1341.7, 1.34, windPressure(50, exposures.shore)),
    check('50 m/s, shore, 0.8 m²', 'force', 'N', 1186.07, 1.2, windForce(windPressure(50, exposures.shore), 0.8)),
    check('45 m/s, square', 'pressure', 'Pa', 949.61, 0.95, windPressure(45, exposures.open, 0.9)),
    check('45 m/s, square, 0.8 m²', 'force', 'N', 839.46, 0.84, windForce(windPressure(45, exposures.open, 0.9), 0.8)),
    check('stand, feet 0.4 m apart', 'uplift', 'N', 1846.9, 1.8, upliftOf(force, 0.875, 60, 0.4)),
    check('bracket, still air', 'top bolt', 'N', 336.2, 0.34, bracketBolts(80, 0.3, 0.35).pull),
    check('bracket, still air', 'shear', 'N', 196.1, 0.2, bracketBolts(80, 0.3, 0.35).shear),
    check('bracket, wind lifting', 'top bolt', 'N', 755.7, 0.76, bracketBolts(80, 0.3, 0.35, { force, arm: 0.3 }).pull),
  ];
};

const soundRows = (): Row[] => {
  const longer = detour(0.6, 1.8, 1.5, 1.5, 6);
  return [
    ...([0, 1, 2, 3] as const).flatMap((planes) => [
      check(`65 dB, 5 m, ${planes} planes`, 'level', 'dB', 40.02 + 3 * planes, 0.05, soundAt(65, 5, planes)),
      check(`65 dB, 10 m, ${planes} planes`, 'level', 'dB', 34 + 3 * planes, 0.05, soundAt(65, 10, planes)),
    ]),
    check('48 and 48 dB', 'together', 'dB', 51.01, 0.01, soundTogether([48, 48])),
    check('48 and 45 dB', 'together', 'dB', 49.76, 0.01, soundTogether([48, 45])),
    check('barrier', 'detour', 'm', 0.363802, 1e-5, longer),
    ...(
      [
        [125, 9.19],
        [250, 11.34],
        [500, 13.84],
        [1000, 16.57],
      ] as const
    ).map(([f, takes]) => check(`barrier, ${f} Hz`, 'takes', 'dB', takes, 0.05, barrierTakes(longer, f))),
    check(
      'fence near by, A-weighted',
      'takes',
      'dB',
      11.3231,
      0.001,
      fenceTakes(longer, { before: Math.hypot(1.5, 1.2), behind: Math.hypot(4.5, 0.3) }),
    ),
    check(
      'low fence far off, A-weighted',
      'takes',
      'dB',
      5.3261,
      0.001,
      fenceTakes(detour(1, 2, 20, 1, 100), { before: Math.hypot(20, 1), behind: Math.hypot(80, 1) }),
    ),
    check('fence without end, A-weighted', 'takes', 'dB', 20, 1e-9, fenceTakes(60, { before: 32, behind: 32 })),
  ];
};

export const source: ValidationSource = {
  id,
  title: 'Refrigerant lines, rooms, wind and sound',
  measure: () => [...chargeRows(), ...tubeRows(), ...roomRows(), ...windRows(), ...soundRows()],
};
