import { nodeAt, type Project, parseQuantity, type QuantityKind, refused } from '@kneewall/project';
import { dewPoint, humidityRatio, standardPressure } from '../../physics/air/index.ts';
import type { RawRead } from './formats.ts';
import { numberIn, type WeatherColumn, type WeatherRow, weatherColumns } from './rows.ts';

type Site = NonNullable<Project['site']>;
export type ColumnNames = NonNullable<NonNullable<Site['weather']>['columns']>;

const kindsOf: Readonly<Record<WeatherColumn, QuantityKind>> = {
  dryBulb: 'temperature',
  dewPoint: 'temperature',
  relativeHumidity: 'relative-humidity',
  pressure: 'pressure',
  windSpeed: 'velocity',
  windDirection: 'angle',
  ghi: 'irradiance',
  dni: 'irradiance',
  dhi: 'irradiance',
};
const needed: readonly WeatherColumn[] = ['dryBulb', 'relativeHumidity', 'ghi', 'dni', 'dhi'];

/** An hourly table with a heading: 8760 rows from 1 January 00:00, columns and units as the project names them. */
export function readHourly(
  table: readonly (readonly string[])[],
  columns: ColumnNames,
  site: Site | undefined,
): RawRead {
  const [head = []] = table;
  const place = {
    latitude: likely(site?.latitude),
    longitude: likely(site?.longitude) ?? 0,
    elevation: likely(site?.elevation),
  };
  if (place.latitude === undefined || place.elevation === undefined)
    return {
      problem: refused(
        'missing-column',
        ['site', 'latitude'],
        'Enter latitude and height of the place first: the table does not state them.',
      ),
    };
  const readers = Object.fromEntries(weatherColumns.map((c) => [c, readerOf(head, c, columns)]));
  const lacking = needed.find((c) => !readers[c]);
  if (lacking)
    return {
      problem: refused(
        'missing-column',
        ['columns', lacking],
        `Say under “Columns” of the weather file, on the page Climate, which column holds “${labelOf(lacking)}”, and in which unit.`,
        { found: head.slice(0, 12).join(', ') },
      ),
    };
  const pressure = standardPressure(place.elevation);
  const rows = table
    .slice(1)
    .filter((r) => r.some((c) => c !== ''))
    .map((r, n) => rowOf(r, n, readers, pressure));
  const timeZone = likely(site?.timeZone) ?? Math.round(place.longitude / 15);
  return {
    raw: {
      name: 'Hourly table',
      latitude: place.latitude,
      longitude: place.longitude,
      elevation: place.elevation,
      timeZone,
      stepSeconds: 3600,
      sunOffset: 1800,
      rows,
    },
  };
}

const labelOf = (column: WeatherColumn): string =>
  nodeAt(['site', 'weather', 'columns', column])?.node.meta.label ?? column;

const likely = (entered: { value: number | { likely: number } } | undefined): number | undefined =>
  entered === undefined ? undefined : typeof entered.value === 'number' ? entered.value : entered.value.likely;

type Reader = ((row: readonly string[]) => number) | undefined;

/** Reads one column into its kind's unit; the unit is turned into a straight line once. */
function readerOf(head: readonly string[], c: WeatherColumn, columns: ColumnNames): Reader {
  const named = columns[c];
  const index = named?.name === undefined ? -1 : head.indexOf(named.name);
  if (index < 0) return undefined;
  const unit = named?.unit ?? '';
  const [zero, one] = ['0', '1'].map((n) => parseQuantity(unit === '' ? n : `${n} ${unit}`, kindsOf[c]));
  const base = zero?.ok ? zero.value : 0;
  const slope = one?.ok ? one.value - base : 1;
  return (row) => base + slope * numberIn(row[index]);
}

function rowOf(
  r: readonly string[],
  n: number,
  readers: Readonly<Record<string, Reader>>,
  standard: number,
): WeatherRow {
  const x = (c: WeatherColumn, otherwise: number) => readers[c]?.(r) ?? otherwise;
  const dryBulb = x('dryBulb', Number.NaN);
  const relativeHumidity = x('relativeHumidity', Number.NaN);
  const pressure = x('pressure', standard);
  const dew = dewPoint(humidityRatio({ t: dryBulb, rh: relativeHumidity }, pressure), pressure);
  return {
    slot: n,
    line: n + 2,
    dryBulb,
    dewPoint: x('dewPoint', dew),
    relativeHumidity,
    pressure,
    windSpeed: x('windSpeed', 3),
    windDirection: x('windDirection', 0),
    ghi: x('ghi', Number.NaN),
    dni: x('dni', Number.NaN),
    dhi: x('dhi', Number.NaN),
  };
}
