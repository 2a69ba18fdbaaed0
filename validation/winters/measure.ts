// Source: statistics of weather files within months; see README.md for files, tolerances and what is not validated.
import { readFileSync } from 'node:fs';
import { dailyRows, monthsOfYear, tiesOfYear, type WeatherYear, winterMaker } from '@kneewall/engine';
import { extraterrestrialDay, solarConstant } from '@kneewall/engine/physics';
import { type Row, row, type ValidationSource } from '../src/row.ts';
import { weatherYear } from '../weather-files/files.ts';

const id = 'winters';
const count = 20;
const monthStart = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334, 365];
type Day = ReturnType<typeof dailyRows>[number];
type Months = ReturnType<typeof monthsOfYear>;

const mean = (x: readonly number[]): number => x.reduce((a, b) => a + b, 0) / Math.max(x.length, 1);

/** Seven months about the coldest. */
function winterOf(months: Months): number[] {
  const means = months.map((m) => m.mean);
  const coldest = means.indexOf(Math.min(...means));
  return [9, 10, 11, 12, 13, 14, 15].map((m) => (coldest + m) % 12);
}

/** Departures of each month's days from its mean, in its spread; and the spread. */
function departures(days: readonly Day[], winter: readonly number[], of: (d: Day) => number) {
  return winter.map((m) => {
    const x = days.slice(monthStart[m], monthStart[m + 1]).map(of);
    const spread = Math.sqrt(mean(x.map((v) => (v - mean(x)) ** 2)));
    return { spread, z: x.map((v) => (v - mean(x)) / spread) };
  });
}

type Columns = { readonly warm: number[][]; readonly clear: number[][]; readonly wind: number[][] };
const tie = (a: number[][], b: number[][], lag: number): number =>
  mean(a.flatMap((x, i) => x.slice(0, x.length - lag).map((v, j) => v * (b[i]?.[j + lag] ?? 0))));

function runs(clear: number[][]): number {
  const found: number[] = [];
  for (const month of clear) {
    let run = 0;
    for (const z of [...month, 1]) {
      if (z >= 0 && run > 0) found.push(run);
      run = z < 0 ? run + 1 : 0;
    }
  }
  return mean(found);
}

const half = -0.5;
const coldAndDull = ({ warm, clear }: Columns): number =>
  warm.flatMap((month, i) => month.filter((z, d) => z < half && (clear[i]?.[d] ?? 0) < half)).length;

function statistics(days: readonly Day[], winter: readonly number[], latitude: number) {
  const warmth = departures(days, winter, (d) => d.mean);
  const clearness = departures(days, winter, (d) => d.sun / extraterrestrialDay(latitude, d.day, solarConstant));
  const columns = {
    warm: warmth.map((m) => m.z),
    clear: clearness.map((m) => m.z),
    wind: departures(days, winter, (d) => d.wind).map((m) => m.z),
  };
  const { warm, clear, wind } = columns;
  return {
    next: { temperature: tie(warm, warm, 1), clearness: tie(clear, clear, 1), wind: tie(wind, wind, 1) },
    after: { temperature: tie(warm, warm, 2), clearness: tie(clear, clear, 2), wind: tie(wind, wind, 2) },
    across: {
      'temperature with clearness': tie(warm, clear, 0),
      'temperature with wind': tie(warm, wind, 0),
      'clearness with wind': tie(clear, wind, 0),
      'clearness with the next day’s temperature': tie(clear, warm, 1),
    },
    run: runs(clear),
    both: coldAndDull(columns),
    spread: mean(warmth.map((m) => m.spread)),
    clearSpread: mean(clearness.map((m) => m.spread)),
  };
}
type Statistics = ReturnType<typeof statistics>;

/** The mean of a figure over twenty winters. */
const over = (made: readonly Statistics[], of: (s: Statistics) => number): number => mean(made.map(of));

type Check = (field: string, unit: string, tolerance: number, of: (s: Statistics) => number) => Row;
const checker =
  (name: string, file: Statistics, made: readonly Statistics[]): Check =>
  (field, unit, tolerance, of) =>
    row({ source: id, case: name, field, unit, expected: of(file), tolerance, known: 'computed' }, over(made, of));

const three = ['temperature', 'clearness', 'wind'] as const;
const persistence = (check: Check, next: number, after: number): Row[] => [
  ...three.map((x) => check(`${x}, a day with the next`, '', next, (s) => s.next[x])),
  ...three.map((x) => check(`${x}, with the day after`, '', after, (s) => s.after[x])),
  check('mean run of dull days', 'days', 0.5, (s) => s.run),
];

const place = ({ latitude, longitude, elevation, timeZone }: WeatherYear) => ({
  latitude,
  longitude,
  elevation,
  timeZone,
});

const files = [
  ['tmy3_725650_denver_intl_co.csv', 'tmy3'],
  ['tmy3_703165_sand_point_ak.csv', 'tmy3'],
  ['tmy3_723170_greensboro_nc.csv', 'tmy3'],
  ['psm3_2017_30min_40.53_-108.54.csv', 'psm3'],
  ['pvgis_tmy_45.000_8.000.csv', 'pvgis-csv'],
] as const;

function fitted([name, format]: (typeof files)[number]): Row[] {
  const year = weatherYear(name, format);
  const [days, months] = [dailyRows(year), monthsOfYear(year)];
  const ties = tiesOfYear(days, months, year.latitude);
  const maker = winterMaker({ months, place: place(year), ties, seed: 1 });
  const of = (rows: readonly Day[]): Statistics => statistics(rows, winterOf(months), year.latitude);
  const made = Array.from({ length: count }, (_, n) => of(dailyRows(maker.year(n))));
  const check = checker(`fitted: ${name}`, of(days), made);
  const across = Object.keys(made[0]?.across ?? {}) as (keyof Statistics['across'])[];
  return [
    ...persistence(check, 0.1, 0.15),
    ...across.map((x) => check(x, '', 0.1, (s) => s.across[x])),
    check('days that are cold and dull', 'days', 8, (s) => s.both),
    check('spread of daily means within a month', 'K', 0.15 * of(days).spread, (s) => s.spread),
    check('spread of daily clearness', '', 0.05, (s) => s.clearSpread),
  ];
}

const heldOut = [
  { name: 'albuquerque', latitude: 35.04, longitude: -106.62, elevation: 1619, timeZone: -7 },
  { name: 'golden', latitude: 39.742, longitude: -105.179, elevation: 1829, timeZone: -7 },
] as const;

function readDays(name: string): Day[] {
  const text = readFileSync(new URL(`./data/${name}_days.csv`, import.meta.url), 'utf8');
  return text
    .trim()
    .split('\n')
    .slice(1)
    .map((line) => {
      const [day = 0, average = 0, range = 0, rh = 0, wind = 0, sun = 0] = line.split(',').map(Number);
      return { day, mean: average, range, rh, wind, sun };
    });
}

function monthsOfDays(days: readonly Day[], latitude: number): Months {
  return Array.from({ length: 12 }, (_, m) => {
    const here = days.slice(monthStart[m], monthStart[m + 1]);
    const of = (pick: (d: Day) => number): number => mean(here.map(pick));
    const above = of((d) => extraterrestrialDay(latitude, d.day, solarConstant));
    const sun = of((d) => d.sun);
    return {
      month: m + 1,
      mean: of((d) => d.mean),
      dailyRange: of((d) => d.range),
      relativeHumidity: of((d) => d.rh),
      wind: of((d) => d.wind),
      clearness: sun / above,
      sun,
    };
  });
}

function unseen({ name, ...where }: (typeof heldOut)[number]): Row[] {
  const days = readDays(name);
  const months = monthsOfDays(days, where.latitude);
  const maker = winterMaker({ months, place: where, seed: 1 });
  const of = (rows: readonly Day[]): Statistics => statistics(rows, winterOf(months), where.latitude);
  const made = Array.from({ length: count }, (_, n) => of(dailyRows(maker.year(n))));
  return persistence(checker(`held out: ${name}`, of(days), made), 0.15, 0.2);
}

export const source: ValidationSource = {
  id,
  title: 'Many winters',
  measure: () => [...files.flatMap(fitted), ...heldOut.flatMap(unseen)],
};
