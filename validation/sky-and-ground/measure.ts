// Sources: computed from the formulas named in README.md; Amsterdam's ground looked up in pvlib's tests.
import {
  clarkAllenEmittance,
  clearSkyEmittance,
  cloudFactor,
  designDayShape,
  groundTemperature,
  skyRadiation,
  skyTemperature,
  swinbankTemperature,
} from '@kneewall/engine/physics';
import { type How, type Row, row, type ValidationSource } from '../src/row.ts';
import { estimatedSky } from './estimatedSky.ts';
import { pvgisSky } from './pvgisSky.ts';

const id = 'sky-and-ground';
const sayer =
  (known: How, name: string, unit: string, tolerance: number) =>
  (field: string, expected: number, ours: number): Row =>
    row({ source: id, case: name, field, unit, expected, tolerance, known }, ours);

/** Air, dew point; Berdahl and Martin e, Ts; Swinbank Ts; Clark and Allen e, Ts; with half cloud Ts, W/m². */
const skies: readonly (readonly [number, number, number, number, number, number, number, number, number])[] = [
  [20, 10, 0.7743, 1.8402, 3.9101, 0.81489, 5.3753, 9.429, 361.552],
  [30, 5, 0.74082, 8.0961, 18.207, 0.80128, 13.666, 17.8404, 406.562],
  [0, -5, 0.68482, -24.6673, -23.9541, 0.77331, -17.0032, -13.2752, 258.624],
  [-15, -20, 0.6282, -43.3253, -44.1965, 0.72933, -34.5873, -31.1152, 194.591],
  [35, 22, 0.86953, 24.4162, 25.4449, 0.8466, 22.4347, 26.7366, 458.606],
];

function skyRows(): Row[] {
  return skies.flatMap(([air, dew, bmE, bmT, swT, caE, caT, cloudyT, cloudyW]) => {
    const name = `air ${air}, dew point ${dew}`;
    const emittance = sayer('computed', name, '', 6e-6);
    const degrees = sayer('computed', name, '°C', 6e-4);
    const cloudy = clarkAllenEmittance(dew) * cloudFactor(0.5);
    return [
      emittance('Berdahl and Martin', bmE, clearSkyEmittance(dew)),
      degrees('Berdahl and Martin, sky', bmT, skyTemperature(air, clearSkyEmittance(dew))),
      degrees('Swinbank, sky', swT, swinbankTemperature(air)),
      emittance('Clark and Allen', caE, clarkAllenEmittance(dew)),
      degrees('Clark and Allen, sky', caT, skyTemperature(air, clarkAllenEmittance(dew))),
      degrees('half cloud, sky', cloudyT, skyTemperature(air, cloudy)),
      sayer('computed', name, 'W/m²', 0.01)('half cloud, radiation', cloudyW, skyRadiation(air, cloudy)),
    ];
  });
}

/** Depth m; °C on days 15, 105, 196, 288. Mean 9 °C, amplitude 12 K, coldest on day 30, 0.05 m²/day. */
const depths: readonly (readonly [number, readonly number[]])[] = [
  [0, [-2.6022, 5.6868, 20.5192, 12.2138]],
  [0.5, [0.2865, 4.4348, 17.5976, 13.4909]],
  [1, [2.8037, 3.9273, 15.0667, 14.0201]],
  [2, [6.5703, 4.3133, 11.3092, 13.6664]],
  [3, [8.7656, 5.5474, 9.1453, 12.4511]],
  [5, [10.0406, 7.932, 7.9316, 10.0771]],
];

function groundRows(): Row[] {
  const soil = { mean: 9, amplitude: 12, coldestDay: 30, diffusivity: 0.05 };
  return depths.flatMap(([depth, expected]) => {
    const say = sayer('computed', `ground at ${depth} m`, '°C', 1e-4);
    return [15, 105, 196, 288].map((day, i) =>
      say(`day ${day}`, expected[i] ?? Number.NaN, groundTemperature(soil, depth, day)),
    );
  });
}

/** Amsterdam, January to December, °C. */
const amsterdam: readonly (readonly [number, readonly number[]])[] = [
  [0.5, [6.55, 4.47, 3.9, 4.39, 7.2, 10.34, 13.3, 15.44, 16.06, 15.06, 12.63, 9.58]],
  [2, [8.41, 6.47, 5.54, 5.51, 6.99, 9.14, 11.45, 13.43, 14.46, 14.26, 12.9, 10.8]],
  [4, [9.63, 8.12, 7.19, 6.91, 7.45, 8.71, 10.26, 11.79, 12.81, 13.06, 12.47, 11.24]],
];
const monthStart = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365] as const;

function amsterdamRows(): Row[] {
  const soil = { mean: 9.964, amplitude: 6.512, coldestDay: 65.9, diffusivity: 0.2998 };
  const misses: number[] = [];
  const rows = amsterdam.flatMap(([depth, months]) => {
    // The largest miss of the fit, 0.60 K as printed to two places.
    const say = sayer('looked up', `Amsterdam, ground at ${depth} m`, '°C', 0.605);
    return months.map((expected, i) => {
      const middle = ((monthStart[i] ?? 0) + (monthStart[i + 1] ?? 0)) / 2;
      const ours = groundTemperature(soil, depth, middle);
      misses.push(ours - expected);
      return say(`month ${i + 1}`, expected, ours);
    });
  });
  const rms = Math.sqrt(misses.reduce((sum, m) => sum + m * m, 0) / misses.length);
  return [...rows, sayer('computed', 'Amsterdam', 'K', 0.01)('RMS of 36 months', 0.195, rms)];
}

/** Fraction of the daily range below the highest, hours 1 to 24. */
const shape = [
  0.88, 0.92, 0.95, 0.98, 1, 0.98, 0.91, 0.74, 0.55, 0.38, 0.23, 0.13, 0.05, 0, 0, 0.06, 0.14, 0.24, 0.39, 0.5, 0.59,
  0.68, 0.75, 0.82,
];

const shapeRows = (): Row[] =>
  shape.map((expected, i) =>
    sayer('from memory', 'design day', '', 0)(`hour ${i + 1}`, expected, designDayShape[i] ?? Number.NaN),
  );

export const source: ValidationSource = {
  id,
  title: 'Sky, ground and the shape of a day',
  measure: () => [
    ...skyRows(),
    ...pvgisSky(id),
    ...estimatedSky(id),
    ...groundRows(),
    ...amsterdamRows(),
    ...shapeRows(),
  ],
};
