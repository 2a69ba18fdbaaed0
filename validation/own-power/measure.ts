// Sources: makers' sheets and charts (looked up), formulas (computed), usage (from memory). See README.md.
import {
  arrayFor,
  batteryFor,
  capacityShare,
  coldLead,
  coldLithium,
  dailyDirect,
  fuelLines,
  fuelRate,
  hoursToEmpty,
  lineThrough,
  lithiumCharge,
  lithiumDischarge,
  peukertHours,
} from '@kneewall/engine/physics';
import { type How, type Row, row, type ValidationSource } from '../src/row.ts';

const id = 'own-power';
const check = (
  name: string,
  field: string,
  unit: string,
  [expected, tolerance]: readonly [number, number],
  ours: number,
  known: How = 'computed',
): Row => row({ source: id, case: name, field, unit, expected, tolerance, known }, ours);

const charge = [
  [-0.1, 0, 0],
  [2.5, 0.1, 0.1],
  [7.5, 0.1, 0.2],
  [17.5, 0.2, 1],
  [37.5, 0.5, 0.75],
  [55, 0.1, 0.1],
  [61, 0, 0],
] as const;
const discharge = [
  [-30, 0.1, 0.1],
  [-10, 0.1, 0.5],
  [30, 0.2, 1],
] as const;

const rates = (): Row[] => [
  ...charge.flatMap(([t, gentle, most]) => [
    check(`charging at ${t} °C`, 'gentle', '1/h', [gentle, 0], lithiumCharge(t).gentle, 'looked up'),
    check(`charging at ${t} °C`, 'most', '1/h', [most, 0], lithiumCharge(t).most, 'looked up'),
  ]),
  ...discharge.flatMap(([t, gentle, most]) => [
    check(`giving at ${t} °C`, 'gentle', '1/h', [gentle, 0], lithiumDischarge(t).gentle, 'looked up'),
    check(`giving at ${t} °C`, 'most', '1/h', [most, 0], lithiumDischarge(t).most, 'looked up'),
  ]),
];

const between = (name: string, low: number, high: number, ours: number, known: How): Row =>
  row({ source: id, case: name, field: 'capacity', unit: '', low, high, tolerance: 0, known }, ours);

const cold = (): Row[] => [
  check('lithium at 0 °C', 'capacity', '', [0.8, 0.005], capacityShare(coldLithium(0.7), 0), 'looked up'),
  check('lithium at -20 °C', 'capacity', '', [0.7, 0.005], capacityShare(coldLithium(0.7), -20), 'looked up'),
  check('lead at 25 °C', 'capacity', '', [1, 0], capacityShare(coldLead, 25), 'from memory'),
  between('lead at 0 °C', 0.75, 0.8, capacityShare(coldLead, 0), 'from memory'),
  between('lead at -20 °C', 0.45, 0.55, capacityShare(coldLead, -20), 'from memory'),
];

const lead = [
  [20, 100, 1.2, 3.78929, 75.786],
  [5, 100, 1.2, 20, 100],
  [45, 225, 1.25, 3.53553, 159.099],
] as const;

const peukert = (): Row[] =>
  lead.flatMap(([amps, rated, k, hours, given]) => {
    const ours = peukertHours(amps, rated, 20, k);
    const name = `${amps} A of ${rated} Ah`;
    return [
      check(name, 'time', 'h', [hours, 1e-5 * hours], ours),
      check(name, 'charge', 'Ah', [given, 1e-5 * given], ours * amps),
    ];
  });

const set20 = [
  [5, 2.3],
  [10, 3.4],
  [15, 4.9],
  [20, 6.1],
] as const;
const gallon = 3.785411784;
const set8 = [
  [4, 0.39 * gallon],
  [6, 0.54 * gallon],
  [8, 0.69 * gallon],
] as const;
const line = [0.4887, 0.8577, 1.2267, 1.5957, 1.9647] as const;

function fuel(): Row[] {
  const [large, small] = [lineThrough(set20), lineThrough(set8)];
  return [
    check('20 kW chart', 'per energy', 'L/kWh', [0.258, 5e-4], large.slope),
    check('20 kW chart', 'idle', 'L/h', [0.95, 5e-3], large.at0),
    check('8 kW chart', 'per energy', 'L/kWh', [0.28391, 5e-6], small.slope),
    check('8 kW chart', 'idle', 'L/h', [0.34069, 5e-6], small.at0),
    ...set20.map(([kw, use]) =>
      check(
        `20 kW set at ${kw} kW`,
        'chart by its line',
        'L/h',
        [use, 0.15],
        large.at0 + large.slope * kw,
        'looked up',
      ),
    ),
    ...set8.map(([kw, use]) =>
      check(`8 kW set at ${kw} kW`, 'chart by its line', 'L/h', [use, 0.02], small.at0 + small.slope * kw, 'looked up'),
    ),
    ...line.map((use, i) =>
      check(`6 kW set at ${1.5 * i} kW`, 'fuel', 'L/h', [use, 1e-9], fuelRate(fuelLines.diesel, 6, 1.5 * i)),
    ),
  ];
}

const published = batteryFor(35, 3, 0.8);
const sizing = (): Row[] => [
  check('8 kWh a day', 'direct', 'kWh', [8.8889, 5e-5], dailyDirect(8, 0.9)),
  check('three days, depth 0.8', 'battery', 'kWh', [33.3333, 5e-5], batteryFor(dailyDirect(8, 0.9), 3, 0.8)),
  check('2.2 sun hours', 'array', 'kW', [5.3872, 5e-5], arrayFor(dailyDirect(8, 0.9), 2.2, 0.75)),
  check('published example', 'days', 'kWh', [105, 0], batteryFor(35, 3, 1), 'looked up'),
  check('published example', 'battery', 'kWh', [131, 0.5], published, 'looked up'),
  check('published example', 'with its losses', 'kWh', [141, 0.5], published / 0.93, 'looked up'),
  check('28 kWh, 24 kWh a day', 'empty after', 'h', [23.436, 1e-9], hoursToEmpty(28 * 0.9, 0.93, 24)),
  check('the same at 0 °C', 'empty after', 'h', [18.749, 5e-4], hoursToEmpty(28 * 0.9 * 0.8, 0.93, 24)),
];

export const source: ValidationSource = {
  id,
  title: 'Battery, generator and sizing by hand',
  measure: () => [...rates(), ...cold(), ...peukert(), ...fuel(), ...sizing()],
};
