// Source: published electrical tables and arithmetic computed outside the project. See README.md.
import { generatorKeeps } from '@kneewall/engine/physics';
import {
  allowedAmpacity,
  ambientFactor,
  batteryCurrent,
  columns,
  continuousCurrent,
  currentOf,
  fillMost,
  gaugeArea,
  gaugeDiameter,
  gaugeName,
  groundingGauge,
  insideArea,
  insulatedArea,
  type Laid,
  minimumAmpacity,
  mostProtection,
  type Pipe,
  pipes,
  resistancePerMetre,
  roofSun,
  smallConductorProtection,
  smallestPipe,
  softStartLeaves,
  standardBelow,
  startingPower,
  tableAmpacity,
  thinnestFor,
  togetherFactor,
  voltageDrop,
} from '@kneewall/engine/wires';
import { checker } from '../src/checker.ts';
import type { How, Row, ValidationSource } from '../src/row.ts';
import {
  ampacities,
  compressors,
  conductors,
  drops,
  factors,
  grounds,
  inHotAir,
  solid,
  together,
  tubing,
} from './tables.ts';

const id = 'circuit';
const thousandFeet = 304.8;
/** Exact arithmetic, to rounding. */
const exact = 1e-9;

const check = checker(id);

const gauge = (n: number): string => `${gaugeName(n)} AWG`;
const hotCopper = (ambient: number): Laid => ({
  metal: 'copper',
  insulation: 90,
  terminals: 75,
  ambient,
  together: 3,
});

const motorRows = (): Row[] =>
  compressors.flatMap(([compressor, rest, least, most, size, mostHard, sizeHard]) => {
    const name = `compressor ${compressor} A, rest ${rest} A`;
    const unit = { compressor, rest };
    return [
      check(name, 'least ampacity', 'A', least, exact, minimumAmpacity(unit)),
      check(name, 'most protection, 1.75', 'A', most, exact, mostProtection(unit, 1.75)),
      check(name, 'breaker, 1.75', 'A', size, exact, standardBelow(mostProtection(unit, 1.75))),
      check(name, 'most protection, 2.25', 'A', mostHard, exact, mostProtection(unit, 2.25)),
      check(name, 'breaker, 2.25', 'A', sizeHard, exact, standardBelow(mostProtection(unit, 2.25))),
    ];
  });

const ruleRows = (): Row[] => [
  ...([14, 12, 10] as const).map((n, i) =>
    check(
      gauge(n),
      'ordinary protection',
      'A',
      [15, 20, 30][i] ?? 0,
      exact,
      smallConductorProtection(n),
      'from memory',
    ),
  ),
  check('continuous load of 16 A', 'counts as', 'A', 20, exact, continuousCurrent(16), 'looked up'),
  check('protection is never below', 'size', 'A', 15, exact, standardBelow(9), 'from memory'),
  check('sun on a roof', 'adds', 'K', 33, exact, roofSun, 'from memory'),
];

const ampacityRows = (): Row[] =>
  ampacities.flatMap(([n, ...printed]) =>
    columns.map((c, i) => check(gauge(n), `${c} °C`, 'A', printed[i] ?? 0, exact, tableAmpacity(n, c), 'looked up')),
  );

const factorRows = (): Row[] =>
  factors.flatMap(([top, printed, law]) =>
    columns.flatMap((c, i) => {
      const [p, l] = [printed[i], law[i]];
      const ours = ambientFactor(top, c);
      const known: How = top > 60 ? 'from memory' : 'looked up';
      if (p === undefined || l === undefined)
        return [
          check(`air of ${top} °C`, `${c} °C may not be used`, '', 0, exact, ours === undefined ? 0 : ours, known),
        ];
      return [
        check(`air of ${top} °C`, `factor, ${c} °C`, '', p, exact, ours, known),
        // The table is printed to two digits.
        check(`air of ${top} °C`, `the law, ${c} °C`, '', l, 0.005, ours),
      ];
    }),
  );

const placeRows = (): Row[] => [
  ...together.map(([count, f]) =>
    check(`${count} conductors`, 'factor', '', f, exact, togetherFactor(count), count < 4 ? 'computed' : 'looked up'),
  ),
  check(
    '12 AWG, 75 °C column, air of 40 °C',
    'ampacity',
    'A',
    22,
    exact,
    allowedAmpacity(12, { ...hotCopper(40), insulation: 75 })?.inPlace,
    'looked up',
  ),
  ...inHotAir.flatMap(([air, list]) =>
    list.map(([n, a]) =>
      check(
        `${gauge(n)}, 90 °C, air of ${air} °C`,
        'ampacity',
        'A',
        a,
        exact,
        allowedAmpacity(n, hotCopper(air))?.inPlace,
      ),
    ),
  ),
  check('for 25.1 A in air of 60 °C', 'thinnest', 'AWG', 10, exact, thinnestFor(25.1, hotCopper(60))),
  check('10 AWG at the terminals', 'ampacity', 'A', 35, exact, allowedAmpacity(10, hotCopper(60))?.atTerminals),
];

const conductorRows = (): Row[] => [
  ...conductors.flatMap(([n, d, area, cold, warm, feet, printed]) => {
    const hot = resistancePerMetre(gaugeArea(n), 75);
    // One part in ten thousand, or half of the last digit given where that is coarser.
    const near = (x: number): number => Math.max(1e-4 * x, 5e-5);
    return [
      check(gauge(n), 'diameter', 'mm', d, near(d), gaugeDiameter(n) * 1000),
      check(gauge(n), 'area', 'mm²', area, near(area), gaugeArea(n)),
      check(gauge(n), 'resistance, 20 °C', 'Ω/km', cold, near(cold), 1000 * resistancePerMetre(gaugeArea(n), 20)),
      check(gauge(n), 'resistance, 75 °C', 'Ω/km', warm, near(warm), 1000 * hot),
      check(gauge(n), 'resistance, 75 °C', 'Ω/1000 ft', feet, near(feet), thousandFeet * hot),
      check(gauge(n), 'printed, stranded', 'Ω/1000 ft', printed, 0.025 * printed, thousandFeet * hot, 'from memory'),
    ];
  }),
  ...solid.map(([n, printed]) =>
    check(
      gauge(n),
      'printed, solid',
      'Ω/1000 ft',
      printed,
      0.005,
      thousandFeet * resistancePerMetre(gaugeArea(n), 75),
      'from memory',
    ),
  ),
];

const dropRows = (): Row[] =>
  drops.flatMap(([current, length, volts, n, lost, share, lostPrinted]) => {
    const name = `${current} A, ${length} m, ${volts} V, ${gauge(n)}`;
    const drop = voltageDrop({ current, length, resistance: resistancePerMetre(gaugeArea(n), 75) });
    const printed = (conductors.find(([m]) => m === n)?.[6] ?? Number.NaN) / thousandFeet;
    return [
      check(name, 'lost', 'V', lost, 1e-3 * lost, drop),
      check(name, 'lost', '%', share, Math.max(1e-3 * share, 5e-4), (100 * drop) / volts),
      check(
        name,
        'lost, printed resistance',
        'V',
        lostPrinted,
        1e-3 * lostPrinted,
        voltageDrop({ current, length, resistance: printed }),
      ),
    ];
  });

const groundRows = (): Row[] => [
  ...grounds.map(([protection, n]) =>
    check(`protection of ${protection} A`, 'ground', 'AWG', n, exact, groundingGauge(protection), 'from memory'),
  ),
  // 10 AWG made 6 AWG has 2.53 times the area; the ground of 30 A goes the same way.
  check(
    'enlarged from 10 to 6 AWG',
    'ground',
    'AWG',
    6,
    exact,
    groundingGauge(30, 'copper', gaugeArea(6) / gaugeArea(10)),
    'from memory',
  ),
];

const squareInch = 645.16;

/** A worked question of a makers' association: three of 12, four of 10 and eight of 8 AWG in one tubing. */
const fillRows = (): Row[] => {
  const wires = [...times(3, 12), ...times(4, 10), ...times(8, 8)].map((n) => insulatedArea(n) ?? Number.NaN);
  const sum = wires.reduce((a, b) => a + b, 0);
  return [
    ...[0.53, 0.31, 0.4, 0.4].map((share, i) =>
      check(`${i + 1} conductors`, 'may fill', '', share, exact, fillMost(i + 1), 'looked up'),
    ),
    check('3 of 12, 4 of 10, 8 of 8 AWG', 'area', 'in²', 0.4171, 1e-6, sum / squareInch, 'looked up'),
    check('3 of 12, 4 of 10, 8 of 8 AWG', 'tubing inside', 'in', 1.38, 1e-9, inches(smallestPipe(wires)), 'looked up'),
    // Printed to a thousandth of a square inch.
    ...tubing.flatMap(([name, whole, part]) => {
      const inside = insideArea(pipes.find((p) => p.name === name)?.diameter ?? Number.NaN) / squareInch;
      return [
        check(`${name} tubing`, 'inside', 'in²', whole, 6e-4, inside, 'looked up'),
        check(`${name} tubing`, '40 %', 'in²', part, 6e-4, fillMost(3) * inside, 'looked up'),
      ];
    }),
  ];
};

const times = (count: number, n: number): number[] => Array.from({ length: count }, () => n);
const inches = (pipe: Pipe | undefined): number => (pipe?.diameter ?? Number.NaN) / 0.0254;

const supplyRows = (): Row[] => [
  check('6 kW at 240 V', 'current', 'A', 25, exact, currentOf(6000, 240)),
  check('6 kW from 51.2 V, 0.93', 'battery current', 'A', 126.01, 0.005, batteryCurrent(6000, 51.2, 0.93)),
  check(
    '2.5 kW from 24 V, low at 22 V, 0.85',
    'battery current',
    'A',
    134,
    0.5,
    batteryCurrent(2500, 22, 0.85),
    'looked up',
  ),
  check(
    '2.5 kW from 24 V, low at 22 V, 0.85',
    'fuse',
    'A',
    167,
    0.5,
    1.25 * batteryCurrent(2500, 22, 0.85),
    'looked up',
  ),
  check('6 kW from 48 V, 0.93', 'fuse at least', 'A', 168, 0.05, 1.25 * batteryCurrent(6000, 48, 0.93)),
  check('locked rotor of 70 A at 240 V', 'power', 'kVA', 16.8, exact, startingPower(70, 240) / 1000),
  check('soft starter', 'leaves at most', '', 0.5, exact, softStartLeaves.high, 'common practice'),
  check('soft starter', 'leaves at least', '', 0.3, exact, softStartLeaves.low, 'common practice'),
  check('engine at 600 m, 25 °C', 'keeps', '', 0.965, exact, generatorKeeps(600, 25), 'common practice'),
  check('engine at 300 m, 36 °C', 'keeps', '', 0.98, exact, generatorKeeps(300, 36), 'common practice'),
];

export const source: ValidationSource = {
  id,
  title: 'Wires and protection',
  measure: () => [
    ...motorRows(),
    ...ruleRows(),
    ...ampacityRows(),
    ...factorRows(),
    ...placeRows(),
    ...conductorRows(),
    ...dropRows(),
    ...groundRows(),
    ...fillRows(),
    ...supplyRows(),
  ],
};
