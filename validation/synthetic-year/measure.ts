// Source: statistics of the weather files in ../weather-files, computed once outside the project. See README.md.
import { factsOfYear, monthsOfYear, syntheticYear, type WeatherYear } from '@kneewall/engine';
import { extraterrestrialDay, solarConstant } from '@kneewall/engine/physics';
import { type Row, row, type ValidationSource } from '../src/row.ts';
import { weatherYear } from '../weather-files/files.ts';

const id = 'synthetic-year';
const seeds = [1, 2, 3, 4, 5];

/** Day-to-day correlation of temperature and of clearness, and the sun of the darkest ten days, kWh/m²: published with the files' statistics. */
const files = [
  { name: 'tmy3_725650_denver_intl_co.csv', format: 'tmy3', temperature: 0.617, clearness: 0.319, darkest: 18.915 },
  { name: 'tmy3_703165_sand_point_ak.csv', format: 'tmy3', temperature: 0.807, clearness: 0.246, darkest: 2.862 },
  { name: 'tmy3_723170_greensboro_nc.csv', format: 'tmy3', temperature: 0.73, clearness: 0.313, darkest: 17.33 },
] as const;

const monthStart = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];
const monthOf = (day: number): number => monthStart.findIndex((first) => first > day) - 1;
const mean = (x: readonly number[]): number => x.reduce((a, b) => a + b, 0) / x.length;

/** Correlation of neighbouring days inside a month, of the departure from that month's mean. */
function tie(days: readonly number[]): number {
  const means = Array.from({ length: 12 }, (_, m) => mean(days.slice(monthStart[m], monthStart[m + 1])));
  const off = days.map((x, d) => x - (means[monthOf(d)] ?? 0));
  const pairs = off.slice(0, 364).map((x, d) => (monthOf(d) === monthOf(d + 1) ? x * (off[d + 1] ?? 0) : 0));
  return mean(pairs) / mean(off.map((x) => x * x));
}

const daily = (x: Float64Array): number[] =>
  Array.from({ length: 365 }, (_, d) => mean([...x.subarray(d * 24, d * 24 + 24)]));
const clearness = (year: WeatherYear): number[] =>
  daily(year.ghi).map((g, d) => (g * 0.024) / extraterrestrialDay(year.latitude, d + 1, solarConstant));

function rowsOf(file: (typeof files)[number]): Row[] {
  const real = weatherYear(file.name, file.format);
  const months = monthsOfYear(real);
  const made = seeds.map((seed) => syntheticYear(months, real, seed));
  const check = (field: string, unit: string, expected: number, tolerance: number, ours: number) =>
    row({ source: id, case: file.name, field, unit, expected, tolerance, known: 'computed' }, ours);
  const worst = (pick: (m: (typeof months)[number]) => number): number =>
    Math.max(...made.flatMap((y) => monthsOfYear(y).map((m, i) => Math.abs(pick(m) - pick(months[i] ?? m)))));
  return [
    check(
      'largest miss of a monthly mean temperature',
      'K',
      0,
      0.1,
      worst((m) => m.mean),
    ),
    check(
      'largest miss of a mean daily range',
      'K',
      0,
      0.5,
      worst((m) => m.dailyRange),
    ),
    check(
      'largest miss of a clearness',
      '',
      0,
      0.01,
      worst((m) => m.clearness),
    ),
    check(
      'day-to-day correlation of temperature',
      '',
      file.temperature,
      0.1,
      mean(made.map((y) => tie(daily(y.dryBulb)))),
    ),
    check('day-to-day correlation of clearness', '', file.clearness, 0.1, mean(made.map((y) => tie(clearness(y))))),
    check(
      'sun of the darkest ten days',
      'kWh/m²',
      file.darkest,
      0.25 * file.darkest,
      mean(made.map((y) => factsOfYear(y).darkestTenDays.sun)),
    ),
  ];
}

export const source: ValidationSource = {
  id,
  title: 'Years made from twelve months',
  measure: () => files.flatMap(rowsOf),
};
