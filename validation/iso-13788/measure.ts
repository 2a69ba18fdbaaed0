// Source: ISO 13788 and ISO 6946 formulas, numbers computed outside the project. See README.md.
import {
  dewPointMagnus,
  jacketTemperature,
  leastFactor,
  saturationMagnus,
  surfaceTemperature,
  temperatureFactor,
} from '@kneewall/engine/physics';
import { type Row, row, type ValidationSource } from '../src/row.ts';

const id = 'iso-13788';

const air = [
  { inside: 20, humidity: 0.4, outside: -10, dew: 6.0024, wet: 0.533412, mould: 0.642301 },
  { inside: 21, humidity: 0.5, outside: -18, dew: 10.1872, wet: 0.722749, mould: 0.809436 },
  { inside: 21, humidity: 0.35, outside: 0, dew: 4.9686, wet: 0.236599, mould: 0.390826 },
] as const;

function measure(): Row[] {
  const check = (what: string, field: string, unit: string, expected: number, tolerance: number, ours: number): Row =>
    row({ source: id, case: what, field, unit, expected, tolerance, known: 'computed' }, ours);
  const single = { inside: 20, humidity: 0.4, outside: -10 };
  const double = { inside: 21, humidity: 0.5, outside: -18 };
  return [
    ...air.flatMap((a) => {
      const what = `${a.inside} °C, ${a.humidity * 100} %, outdoors ${a.outside} °C`;
      return [
        check(what, 'dew point', '°C', a.dew, 1e-4, dewPointMagnus(a.humidity * saturationMagnus(a.inside))),
        check(what, 'least factor, no wet surface', '', a.wet, 1e-5, leastFactor(a, 1)),
        check(what, 'least factor, below 80 %', '', a.mould, 1e-5, leastFactor(a, 0.8)),
      ];
    }),
    check(
      'single glass',
      'surface',
      '°C',
      -2.4138,
      1e-4,
      surfaceTemperature(temperatureFactor(5.747126, 0.13), single),
    ),
    check('double glass', 'surface', '°C', 6.804, 1e-4, surfaceTemperature(temperatureFactor(2.8, 0.13), double)),
    check('double glass', 'factor', '', 0.636, 1e-9, temperatureFactor(2.8, 0.13)),
  ];
}

/** Duct air of 13 °C in an attic by noon and by night, three jackets. */
const jackets = [
  [50, 0.74, 45.5952],
  [50, 1.057, 46.8021],
  [50, 1.409, 47.548],
  [32, 0.74, 29.7381],
  [32, 1.057, 30.3578],
  [32, 1.409, 30.7409],
] as const;

const jacketRows = (): Row[] =>
  jackets.map(([around, resistance, expected]) =>
    row(
      {
        source: id,
        case: `jacket of ${resistance} m²K/W in ${around} °C`,
        field: 'surface',
        unit: '°C',
        expected,
        tolerance: 1e-4,
        known: 'computed',
      },
      jacketTemperature(around, 13, resistance),
    ),
  );

export const source: ValidationSource = {
  id,
  title: 'Damp surfaces, ISO 13788',
  measure: () => [...measure(), ...jacketRows()],
};
