// Sources: psychrolib for states (computed); the bypass-factor method (from memory, numbers computed); 10 CFR 430 appendix M (from memory).
import { apparatusDewPoint, bypassAt, defrostLoss } from '@kneewall/engine';
import { humidityRatio } from '@kneewall/engine/physics';
import { type Row, row, type ValidationSource } from '../src/row.ts';

const id = 'coil';
const coils = [
  {
    name: '26.667/19.444 °C, sea level',
    t1: 26.667,
    wb: 19.444,
    t2: 13,
    rh: 0.92,
    p: 101_325,
    adp: 11.08925,
    bypass: 0.122659,
  },
  { name: '25/17.5 °C, 1619 m', t1: 25, wb: 17.5, t2: 12.5, rh: 0.9, p: 83_328.45, adp: 10.29647, bypass: 0.149864 },
  {
    name: '26.7/19.4 °C, sea level',
    t1: 26.7,
    wb: 19.4,
    t2: 14.5,
    rh: 0.9,
    p: 101_325,
    adp: 12.34546,
    bypass: 0.150095,
  },
] as const;

const points = (): Row[] =>
  coils.flatMap((c) => {
    const entering = { t: c.t1, w: humidityRatio({ t: c.t1, wetBulb: c.wb }, c.p) };
    const adp = apparatusDewPoint(entering, { t: c.t2, w: humidityRatio({ t: c.t2, rh: c.rh }, c.p) }, c.p);
    return [
      row(
        {
          source: id,
          case: c.name,
          field: 'apparatus dew point',
          unit: '°C',
          expected: c.adp,
          tolerance: 0.02,
          known: 'computed',
        },
        adp,
      ),
      row(
        {
          source: id,
          case: c.name,
          field: 'bypass factor',
          unit: '',
          expected: c.bypass,
          tolerance: 0.002,
          known: 'computed',
        },
        (c.t2 - adp) / (c.t1 - adp),
      ),
    ];
  });

const rated = { dewPoint: 11.08925, bypass: 0.122659, massFlow: 0.439512 };
const flows = (): Row[] => [
  row(
    {
      source: id,
      case: '80 % of the flow',
      field: 'bypass factor',
      unit: '',
      expected: 0.07259,
      tolerance: 1e-5,
      known: 'computed',
    },
    bypassAt(rated, 0.8 * rated.massFlow),
  ),
  row(
    {
      source: id,
      case: '120 % of the flow',
      field: 'bypass factor',
      unit: '',
      expected: 0.174013,
      tolerance: 1e-5,
      known: 'computed',
    },
    bypassAt(rated, 1.2 * rated.massFlow),
  ),
];

const celsius = (f: number): number => ((f - 32) * 5) / 9;
const frost = (): Row[] =>
  (
    [
      [35, 0.1],
      [17, 0],
      [45, 0],
      [62, 0],
    ] as const
  ).map(([f, expected]) =>
    row(
      {
        source: id,
        case: `frost at ${f} °F`,
        field: 'capacity lost',
        unit: '',
        expected,
        tolerance: 1e-3,
        known: 'from memory',
      },
      defrostLoss(celsius(f), 0.1),
    ),
  );

export const source: ValidationSource = {
  id,
  title: 'Cooling coil, and frost on the outdoor coil',
  measure: () => [...points(), ...flows(), ...frost()],
};
