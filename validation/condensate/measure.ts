// Source: codes, manuals and arithmetic computed outside the project. See README.md.
import {
  carriesHalfFull,
  coldResistance,
  columnOf,
  iceShare,
  litresAnHour,
  panHolds,
  pumpedFlow,
  sealHolds,
  slopeLeast,
  timeToFill,
  timeToFreeze,
  trapUnderPressure,
  trapUnderSuction,
  tubeHead,
  waterFromAir,
} from '@kneewall/engine/drain';
import { humidityRatio, moistAir } from '@kneewall/engine/physics';
import { checker } from '../src/checker.ts';
import { type Row, row, type ValidationSource } from '../src/row.ts';

const id = 'condensate';
const inch = 0.0254;
const inchOfWater = 249.089;
/** Pa. */
const seaLevel = 101_325;
const btuPerHour = 0.29307107;

const check = checker(id);

// entering °C and share of saturation, leaving likewise, L/s entering; W1, W2, kg/s dry air, litres an hour
const coils: readonly (readonly number[])[] = [
  [26.7, 0.51, 13, 0.95, 400, 0.011169, 0.008858, 0.46259, 3.848],
  [29, 0.6, 15, 0.92, 380, 0.015121, 0.009782, 0.43341, 8.33],
  [24, 0.55, 12, 0.95, 450, 0.010244, 0.008288, 0.52591, 3.703],
];

const coilRows = (): Row[] =>
  coils.flatMap(([t1 = 0, rh1 = 0, t2 = 0, rh2 = 0, flow = 0, w1 = 0, w2 = 0, dry = 0, litres = 0]) => {
    const name = `${t1} °C ${Math.round(100 * rh1)} % to ${t2} °C ${100 * rh2} %, ${flow} L/s`;
    const entering = humidityRatio({ t: t1, rh: rh1 }, seaLevel);
    const leaving = humidityRatio({ t: t2, rh: rh2 }, seaLevel);
    const dryAir = flow / 1000 / moistAir({ t: t1, rh: rh1 }, seaLevel).volume;
    return [
      check(name, 'W1', 'kg/kg', w1, 0.005 * w1, entering),
      check(name, 'W2', 'kg/kg', w2, 0.005 * w2, leaving),
      check(name, 'dry air', 'kg/s', dry, 0.005 * dry, dryAir),
      check(name, 'water', 'L/h', litres, 0.005 * litres, 3600 * waterFromAir(dryAir, entering, leaving)),
    ];
  });

const ratingRows = (): Row[] =>
  (
    [
      [24_000, 0.75, 2.58],
      [36_000, 0.7, 4.643],
      [18_000, 0.8, 1.548],
    ] as const
  ).map(([capacity, share, litres]) =>
    check(
      `${capacity} Btu/h, ${share} sensible`,
      'water',
      'L/h',
      litres,
      0.002 * litres,
      litresAnHour(capacity * btuPerHour, share),
    ),
  );

const trapRows = (): Row[] => [
  ...(
    [
      [0.3, 1.3, 0.65],
      [0.5, 1.5, 0.75],
      [0.7, 1.7, 0.85],
      [1, 2, 1],
      [2.5, 3.5, 1.75],
    ] as const
  ).flatMap(([suction, drop, seal]) => {
    const trap = trapUnderSuction(suction * inchOfWater);
    const name = `suction of ${suction} inH2O`;
    return [
      check(name, 'drop', 'in', drop, 1e-9, trap.drop / inch),
      check(name, 'seal', 'in', seal, 1e-9, trap.seal / inch),
      check(name, 'room', 'in', drop + seal, 1e-9, trap.room / inch),
      // Why the rule is half: the seal's two legs hold the suction in a dry season.
      row(
        {
          source: id,
          case: name,
          field: 'seal holds at start',
          unit: 'Pa',
          low: suction * inchOfWater,
          high: Number.POSITIVE_INFINITY,
          tolerance: 1e-9,
          known: 'computed',
        },
        sealHolds(trap.seal),
      ),
    ];
  }),
  check('suction of 125 Pa', 'water it holds up', 'mm', 12.7, 0.1, 1000 * columnOf(125)),
  check('suction of 125 Pa', 'drop', 'mm', 38.1, 0.1, 1000 * trapUnderSuction(125).drop),
  check('suction of 125 Pa', 'seal', 'mm', 19.1, 0.1, 1000 * trapUnderSuction(125).seal),
  check(
    'pressure of 0.5 inH2O',
    'seal',
    'in',
    1,
    1e-9,
    trapUnderPressure(0.5 * inchOfWater).seal / inch,
    'common practice',
  ),
];

const fallRows = (): Row[] => [
  ...(
    [
      [10, 1.25],
      [20, 2.5],
      [35, 4.375],
    ] as const
  ).map(([feet, fall]) => check(`${feet} ft`, 'fall', 'in', fall, 1e-9, feet * 12 * slopeLeast, 'looked up')),
  ...(
    [
      [0.0209, 210.9],
      [0.0266, 401.1],
      [0.0351, 840.3],
    ] as const
  ).map(([diameter, litres]) =>
    check(
      `${1000 * diameter} mm half full at 1/96`,
      'carries',
      'L/h',
      litres,
      0.005 * litres,
      3.6e6 * carriesHalfFull(diameter, slopeLeast).flow,
    ),
  ),
  check('20.9 mm half full at 1/96', 'speed', 'm/s', 0.3415, 0.005 * 0.3415, carriesHalfFull(0.0209, slopeLeast).speed),
];

const panRows = (): Row[] => {
  const first = { length: 1.37, width: 0.61, depth: 0.038 };
  const larger = { length: 1.52, width: 0.76, depth: 0.038 };
  return [
    check('0.61 x 1.37 x 0.038 m', 'holds', 'L', 31.757, 0.032, 1000 * panHolds(first)),
    check('0.61 x 1.37 x 0.038 m, 2.6 L/h', 'fills', 'min', 732.8, 0.73, timeToFill(panHolds(first), 2.6) / 60),
    check('0.76 x 1.52 x 0.038 m', 'holds', 'L', 43.898, 0.044, 1000 * panHolds(larger)),
    check('0.76 x 1.52 x 0.038 m, 4 L/h', 'fills', 'min', 658.5, 0.66, timeToFill(panHolds(larger), 4) / 60),
    check('10 mm a metre out of level', 'holds', 'L', 26.032, 0.026, 1000 * panHolds(first, 0.01)),
  ];
};

const frostRows = (): Row[] =>
  (
    [
      [0, 1.4902, 14.46, 284.6],
      [0.013, 3.8469, 37.33, 734.7],
      [0.025, 5.3172, 51.6, 1015.5],
    ] as const
  ).flatMap(([insulation, resistance, cold, solid]) => {
    const pipe = { inner: 0.0209, outer: 0.0267, insulation, film: 8 };
    const name = `${1000 * insulation} mm of foam, 5 °C into -10 °C`;
    const time = timeToFreeze(pipe, 5, -10);
    return [
      check(name, 'resistance', 'K m/W', resistance, 0.01 * resistance, coldResistance(pipe)),
      check(name, 'to freezing', 'min', cold, 0.01 * cold, time.cold / 60),
      check(name, 'to solid', 'min', solid, 0.01 * solid, time.solid / 60),
    ];
  });

// mm of foam, K below freezing at the worst, hours of half a sine; kelvin hours and share of ice by fine steps
const frosts: readonly (readonly [number, number, number, number, number])[] = [
  [25, 10, 16, 101.85916, 0.572124],
  [13, 8, 10, 50.92958, 0.386887],
  [0, 3, 8, 15.278875, 0.306193],
];

/** A night whose air falls and rises again. Cooling from 5 to 0 °C, a sixteenth of what freezing takes, is left out by us. */
const iceRows = (): Row[] =>
  frosts.map(([foam, most, hours, kelvinHours, share]) =>
    row(
      {
        source: id,
        case: `${foam} mm of foam, ${hours} h down to -${most} °C`,
        field: 'ice',
        unit: '',
        low: share,
        high: share + (5 * 4186) / 334_000,
        tolerance: 1e-9,
        known: 'computed',
      },
      iceShare({ inner: 0.0209, outer: 0.0267, insulation: foam / 1000, film: 8 }, kelvinHours),
    ),
  );

const pumpRows = (): Row[] => [
  check('60 L/h through 10 m of 6 mm', 'head', 'm', 0.694587, 1e-5, tubeHead(0.006, 10) * (60 / 3.6e6)),
  check('60 L/h through 6 m of 9.5 mm', 'head', 'm', 0.0663114, 1e-6, tubeHead(0.0095, 6) * (60 / 3.6e6)),
  check(
    '5 m and 60 L/h at its ends, 2 m of lift, 6 m of 9.5 mm',
    'lifts',
    'L/h',
    35.528807,
    1e-5,
    3.6e6 * pumpedFlow({ headMost: 5, flowMost: 60 / 3.6e6, lift: 2, tube: 0.0095, tubeRun: 6 }),
  ),
];

export const source: ValidationSource = {
  id,
  title: 'Water from a coil, traps, falls, pans, pumps and frost',
  measure: () => [
    ...coilRows(),
    ...ratingRows(),
    ...trapRows(),
    ...fallRows(),
    ...panRows(),
    ...frostRows(),
    ...iceRows(),
    ...pumpRows(),
  ],
};
