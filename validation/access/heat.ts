// Source: work in heat, wet bulb and heat index. See README.md.
import {
  alertLimit,
  effortWork,
  exposureLimit,
  heatIndex,
  minutesAnHour,
  restWork,
  screeningLimit,
  timeMean,
  wbgtInSun,
  wbgtInside,
  wetBulbNear,
} from '@kneewall/engine/access';
import type { Row } from '../src/row.ts';
import { check } from './check.ts';

const index = (): Row[] => [
  ...(
    [
      [25, 45, 38, 31, 30.3],
      [22, 52, 50, 31, 30.8],
      [28, 40, 36, 31.6, 31.2],
    ] as const
  ).flatMap(([wet, globe, air, inside, sun]) => [
    check(`wet ${wet}, globe ${globe}, air ${air} °C`, 'WBGT inside', '°C', inside, 1e-9, wbgtInside(wet, globe)),
    check(`wet ${wet}, globe ${globe}, air ${air} °C`, 'WBGT in the sun', '°C', sun, 1e-9, wbgtInSun(wet, globe, air)),
  ]),
  check(
    '45 min at 30, 15 at 24 °C',
    'mean',
    '°C',
    28.5,
    1e-9,
    timeMean([
      [45, 30],
      [15, 24],
    ]),
  ),
  check(
    '45 min at 300, 15 at 115 W',
    'mean',
    'W',
    253.75,
    1e-9,
    timeMean([
      [45, 300],
      [15, 115],
    ]),
  ),
  check(
    '45 min at 415, 15 at 115 W',
    'mean',
    'W',
    340,
    1e-9,
    timeMean([
      [45, 415],
      [15, 115],
    ]),
  ),
];

const limits = (): Row[] => [
  ...(
    [
      [117, 30.74, 32.92],
      [180, 28.1, 30.76],
      [300, 24.97, 28.21],
      [415, 22.99, 26.59],
      [520, 21.6, 25.47],
    ] as const
  ).flatMap(([work, alert, exposure]) => [
    check(`${work} W`, 'limit, not used to heat', '°C', alert, 0.005, alertLimit(work), 'looked up'),
    check(`${work} W`, 'limit, used to heat', '°C', exposure, 0.005, exposureLimit(work), 'looked up'),
  ]),
  ...(
    [
      ['rest', 115, restWork],
      ['light', 180, effortWork.light],
      ['moderate', 300, effortWork.moderate],
      ['heavy', 415, effortWork.heavy],
      ['very heavy', 520, effortWork.veryHeavy],
    ] as const
  ).map(([name, work, ours]) => check(name, 'heat of a person', 'W', work, 0, ours, 'from memory')),
];

// minutes; used to heat and not: light, moderate, heavy, very heavy
const table: readonly (readonly [number, readonly number[], readonly number[]])[] = [
  [60, [31, 28], [28, 25]],
  [45, [31, 29, 27.5], [28.5, 26, 24]],
  [30, [32, 30, 29, 28], [29.5, 27, 25.5, 24.5]],
  [15, [32.5, 31.5, 30.5, 30], [30, 29, 28, 27]],
];
const efforts = ['light', 'moderate', 'heavy', 'veryHeavy'] as const;
const screening = (): Row[] => [
  ...table.flatMap(([minutes, used, unused]) =>
    [used, unused].flatMap((line, i) =>
      line.map((limit, j) =>
        check(
          `${minutes} min of ${efforts[j]} work${i === 0 ? ', used to heat' : ''}`,
          'screening limit',
          '°C',
          limit,
          0,
          screeningLimit(minutes, efforts[j] ?? 'light', i === 0) ?? Number.NaN,
          'from memory',
        ),
      ),
    ),
  ),
  check('attic of 50 °C and 10 %, globe 52', 'WBGT', '°C', 33.3, 0.05, wbgtInside(wetBulbNear(50, 10) + 1, 52)),
  check(
    'attic of 50 °C and 10 %, globe 52',
    'minutes of light work',
    'min',
    0,
    0,
    minutesAnHour(wbgtInside(wetBulbNear(50, 10) + 1, 52), 'light', true),
  ),
];

const wet = (): Row[] => [
  ...(
    [
      [20, 50, 13.69934],
      [30, 50, 22.29683],
      [35, 40, 24.51415],
      [40, 20, 22.70392],
      [45, 15, 23.93576],
      [50, 10, 24.27702],
      [25, 80, 22.3295],
      [30, 20, 15.90048],
    ] as const
  ).map(([t, rh, expected]) => check(`${t} °C, ${rh} %`, 'wet bulb', '°C', expected, 1e-4, wetBulbNear(t, rh))),
  check("20 °C, 50 %, the paper's example", 'wet bulb', '°C', 13.7, 0.05, wetBulbNear(20, 50), 'from memory'),
  check('27.1 °C, 66.4 %', 'wet bulb', '°C', 22.4, 0.1, wetBulbNear(27.1, 66.4), 'looked up'),
  check('25 °C, 50 %', 'wet bulb', '°C', 18, 0.1, wetBulbNear(25, 50), 'looked up'),
];

// °F, %, formula, printed table
const indices: readonly (readonly [number, number, number, number?])[] = [
  [90, 50, 94.597, 95],
  [90, 70, 105.922, 106],
  [96, 50, 107.637, 108],
  [100, 40, 109.256, 109],
  [104, 40, 118.877, 119],
  [110, 40, 135.657, 136],
  [86, 90, 105.394, 105],
  [85, 95, 104.612],
  [95, 10, 89.45],
  [105, 5, 96.871],
  [78, 60, 78.32],
];
const fahrenheit = (c: number): number => 1.8 * c + 32;
const felt = (): Row[] => [
  ...indices.flatMap(([t, rh, expected, printed]) => [
    check(`${t} °F, ${rh} %`, 'heat index', '°F', expected, 0.01, heatIndex(t, rh), 'looked up'),
    ...(printed === undefined
      ? []
      : [check(`${t} °F, ${rh} %`, 'printed table', '°F', printed, 1, heatIndex(t, rh), 'from memory')]),
  ]),
  check('29 °C, 50 %', 'heat index', '°C', 29.7, 0.297, (heatIndex(fahrenheit(29), 50) - 32) / 1.8, 'looked up'),
  check('30 °C, 70 %', 'heat index', '°C', 35.33, 0.3533, (heatIndex(fahrenheit(30), 70) - 32) / 1.8, 'looked up'),
];

export const heatRows = (): Row[] => [...index(), ...limits(), ...screening(), ...wet(), ...felt()];
