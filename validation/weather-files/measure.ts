// Source: the files themselves (NREL, JRC), figures computed from them outside the project. See README.md.
import { closureResidual, factsOfYear, type WeatherFormat, type WeatherYear } from '@kneewall/engine';
import { type Row, row, type ValidationSource } from '../src/row.ts';
import { weatherYear } from './files.ts';

const id = 'weather-files';

// rows, mean, min, max, sums kWh/m² (global, direct, diffuse), exceeded 0.4 and 1 %, 99.6 and 99 %, wind, degree days below 18.333
const files: readonly (readonly [string, WeatherFormat, ...number[]])[] = [
  [
    'tmy3_725650_denver_intl_co.csv',
    'tmy3',
    8760,
    10.875,
    -19.4,
    40,
    1670.2,
    1977.6,
    556.5,
    34.4,
    33.3,
    -13.9,
    -11.1,
    3.92,
    3342,
  ],
  [
    'tmy3_703165_sand_point_ak.csv',
    'tmy3',
    8760,
    4.421,
    -10.6,
    19.4,
    829.2,
    819.2,
    460.9,
    16.6,
    15.5,
    -8.9,
    -8,
    5.07,
    5078,
  ],
  [
    'tmy3_723170_greensboro_nc.csv',
    'tmy3',
    8760,
    14.422,
    -16.7,
    35.6,
    1566.2,
    1476.5,
    682.2,
    33.3,
    32.2,
    -11.1,
    -9.4,
    3.05,
    2250,
  ],
  [
    'psm3_2017_30min_40.53_-108.54.csv',
    'psm3',
    17520,
    8.076,
    -27.7,
    35,
    1748.9,
    2173.1,
    528.1,
    33.3,
    32.3,
    -18.6,
    -14.8,
    2.65,
    4223,
  ],
  [
    'pvgis_tmy_45.000_8.000.csv',
    'pvgis-csv',
    8760,
    13.564,
    -2.3,
    34.3,
    1435.9,
    1591.6,
    570.9,
    31.7,
    30.2,
    -1.3,
    -0.7,
    1.21,
    2267,
  ],
  [
    'pvgis_tmy_45.000_8.000.json',
    'pvgis-json',
    8760,
    13.564,
    -2.3,
    34.3,
    1435.9,
    1591.6,
    570.9,
    31.7,
    30.2,
    -1.3,
    -0.7,
    1.21,
    2267,
  ],
];

const mean = (x: Float64Array): number => x.reduce((a, b) => a + b, 0) / x.length;
const least = (x: Float64Array): number => x.reduce((a, b) => Math.min(a, b));
const most = (x: Float64Array): number => x.reduce((a, b) => Math.max(a, b));

function wholeFile([name, format, ...expected]: (typeof files)[number]): Row[] {
  const year = weatherYear(name, format);
  const facts = factsOfYear(year);
  const hours = year.stepSeconds / 3600;
  const sum = (x: Float64Array) => (mean(x) * x.length * hours) / 1000;
  const t = year.dryBulb;
  const fields: readonly (readonly [string, string, number, number])[] = [
    ['rows', '', t.length, 0],
    ['mean temperature', '°C', mean(t), 0.001],
    ['lowest', '°C', least(t), 0.05],
    ['highest', '°C', most(t), 0.05],
    ['global', 'kWh/m²', sum(year.ghi), 0.1],
    ['direct', 'kWh/m²', sum(year.dni), 0.1],
    ['diffuse', 'kWh/m²', sum(year.dhi), 0.1],
    ['exceeded 0.4 %', '°C', facts.cooling004, 0.3],
    ['exceeded 1 %', '°C', facts.cooling01, 0.3],
    ['exceeded 99.6 %', '°C', facts.heating996, 0.3],
    ['exceeded 99 %', '°C', facts.heating99, 0.3],
    ['wind', 'm/s', mean(year.windSpeed), 0.005],
    ['degree days', 'K d', facts.degreeDays.heating, 1],
  ];
  return fields.map(([field, unit, ours, tolerance], i) =>
    row(
      { source: id, case: name, field, unit, expected: expected[i] ?? Number.NaN, tolerance, known: 'computed' },
      ours,
    ),
  );
}

// shift of the sun against the file's own clock in minutes, residual W/m²
const residuals: readonly (readonly [string, WeatherFormat, number, number])[] = [
  ['tmy3_725650_denver_intl_co.csv', 'tmy3', 0, 0.93],
  ['tmy3_725650_denver_intl_co.csv', 'tmy3', 30, 31.3],
  ['tmy3_703165_sand_point_ak.csv', 'tmy3', 0, 0.57],
  ['tmy3_703165_sand_point_ak.csv', 'tmy3', -60, 27.1],
  ['tmy3_723170_greensboro_nc.csv', 'tmy3', 0, 1.56],
  ['psm3_2017_30min_40.53_-108.54.csv', 'psm3', 0, 0.43],
  ['pvgis_tmy_45.000_8.000.csv', 'pvgis-csv', 0, 0.71],
];

const closures = (): Row[] =>
  residuals.map(([name, format, shift, expected]) =>
    // The years of a typical year differ; the sun of one common year stands up to a quarter of a degree elsewhere.
    row(
      {
        source: id,
        case: name,
        field: `closure, sun ${shift} min`,
        unit: 'W/m²',
        expected,
        tolerance: 0.5 + 0.02 * expected,
        known: 'computed',
      },
      closureResidual(weatherYear(name, format), shift),
    ),
  );

function singleRows(): Row[] {
  const denver = weatherYear('tmy3_725650_denver_intl_co.csv', 'tmy3');
  const psm = weatherYear('psm3_2017_30min_40.53_-108.54.csv', 'psm3');
  const pvgis = weatherYear('pvgis_tmy_45.000_8.000.csv', 'pvgis-csv');
  const at = (
    name: string,
    year: WeatherYear,
    i: number,
    expected: Partial<Record<keyof WeatherYear, number>>,
  ): Row[] =>
    Object.entries(expected).map(([field, value]) =>
      row(
        {
          source: id,
          case: name,
          field,
          unit: '',
          expected: value ?? Number.NaN,
          tolerance: 1e-9 * Math.max(1, Math.abs(value ?? 0)),
          known: 'computed',
        },
        year[field as 'ghi'][i] ?? Number.NaN,
      ),
    );
  return [
    ...at('Denver row 12', denver, 11, {
      ghi: 430,
      dni: 540,
      dhi: 187,
      dryBulb: 2.8,
      dewPoint: -7.8,
      relativeHumidity: 0.42,
      pressure: 82_300,
      windDirection: 20,
      windSpeed: 4.6,
    }),
    ...at('Denver row 5000', denver, 4999, {
      ghi: 423,
      dni: 704,
      dhi: 91,
      dryBulb: 22.2,
      dewPoint: 10.6,
      pressure: 84_400,
      windSpeed: 2.1,
    }),
    ...at('PSM row 25', psm, 24, {
      ghi: 295,
      dni: 197,
      dhi: 207,
      dryBulb: 0.3,
      dewPoint: -5.9,
      pressure: 77_500,
      windSpeed: 6.4,
    }),
    // 2011-07-02 12:00 UTC is 13:00 in the file's zone, one hour east.
    ...at('PVGIS row 4381', pvgis, 4381, {
      ghi: 851,
      dni: 612.08,
      dhi: 289,
      dryBulb: 22.15,
      pressure: 99_320,
      windSpeed: 1.93,
    }),
  ];
}

export const source: ValidationSource = {
  id,
  title: 'Weather files of three publishers',
  measure: () => [...files.flatMap(wholeFile), ...closures(), ...singleRows()],
};
