import { type Problem, refused } from '@kneewall/project';
import { dayOfYear, numberIn, type WeatherRow } from './rows.ts';

/** What a file says before its rows are checked. */
export type RawYear = {
  readonly name: string;
  readonly latitude: number;
  readonly longitude: number;
  readonly elevation: number;
  readonly timeZone: number;
  readonly stepSeconds: number;
  readonly sunOffset: number;
  readonly rows: readonly WeatherRow[];
  /** Line of the first row of a 29 February, which the year of 365 days leaves out. */
  readonly leapLine?: number;
};
export type RawRead = { readonly raw: RawYear } | { readonly problem: Problem };

const column = (head: readonly string[], ...names: readonly string[]): number =>
  head.findIndex((h) => names.some((n) => h.toLowerCase() === n.toLowerCase()));
const noColumn = (name: string): RawRead => ({
  problem: refused('missing-column', ['column', name], `The file has no column “${name}”. Get it with that column.`),
});

type Cell = 't' | 'dew' | 'rh' | 'p' | 'ws' | 'wd' | 'ghi' | 'dni' | 'dhi';

/** The numbers of a row of either table: both state humidity in per cent and pressure in millibar. */
const measured = (x: (cell: Cell) => number): Omit<WeatherRow, 'slot' | 'line'> => ({
  dryBulb: x('t'),
  dewPoint: x('dew'),
  relativeHumidity: x('rh') / 100,
  pressure: x('p') * 100,
  windSpeed: x('ws'),
  windDirection: x('wd'),
  ghi: x('ghi'),
  dni: x('dni'),
  dhi: x('dhi'),
});

/**
 * TMY3, also as a spreadsheet saves it again. Labels are the end of the hour in local standard time; sun values are
 * the hour before, so that the sun stands in the middle of the row.
 */
export function readTmy3(table: readonly (readonly string[])[]): RawRead {
  const [place = [], head = []] = table;
  const at = (name: string) => head.findIndex((h) => h.startsWith(name));
  const names = {
    date: 'Date',
    time: 'Time',
    ghi: 'GHI (',
    dni: 'DNI (',
    dhi: 'DHI (',
    t: 'Dry-bulb (',
    dew: 'Dew-point (',
    rh: 'RHum (',
    p: 'Pressure (',
    wd: 'Wdir (',
    ws: 'Wspd (',
  };
  const i = Object.fromEntries(Object.entries(names).map(([k, n]) => [k, at(n)])) as Record<keyof typeof names, number>;
  const missing = Object.entries(i).find(([, n]) => n < 0);
  if (missing) return noColumn(names[missing[0] as keyof typeof names]);
  const cloud = at('OpqCld (');
  const rows = table.slice(2).flatMap((r, n): WeatherRow[] => {
    const date = /^(\d+)\/(\d+)\/\d+$/.exec(r[i.date] ?? '');
    const hour = Number((r[i.time] ?? '').split(':')[0]);
    const day = date ? dayOfYear(Number(date[1]), Number(date[2])) : undefined;
    if (day === undefined || !(hour >= 1 && hour <= 24)) return [];
    const x = (k: keyof typeof names) => numberIn(r[i[k]]);
    return [
      {
        slot: day * 24 + hour - 1,
        line: n + 3,
        ...measured(x),
        ...(cloud < 0 ? {} : { cloud: numberIn(r[cloud]) / 10 }),
      },
    ];
  });
  const leap = table.findIndex((r) => /^0?2\/29\//.test(r[i.date] ?? ''));
  const [, station = '', , zone, lat, lon, height] = place;
  return {
    raw: {
      name: station,
      latitude: Number(lat),
      longitude: Number(lon),
      elevation: Number(height),
      timeZone: Number(zone),
      stepSeconds: 3600,
      sunOffset: 1800,
      rows,
      ...(leap < 0 ? {} : { leapLine: leap + 1 }),
    },
  };
}

/**
 * NSRDB PSM 3 and 4. Labels are instants. Rows in another zone than the site's (files are given out in UTC unless asked
 * otherwise) are turned to the site's and rolled round the end of the year.
 */
export function readPsm(table: readonly (readonly string[])[]): RawRead {
  const [keys = [], values = [], head = []] = table;
  const meta = (name: string) => values[column(keys, name)] ?? '';
  const names = {
    year: ['Year'],
    month: ['Month'],
    day: ['Day'],
    hour: ['Hour'],
    minute: ['Minute'],
    ghi: ['GHI'],
    dni: ['DNI'],
    dhi: ['DHI'],
    t: ['Temperature'],
    dew: ['Dew Point'],
    rh: ['Relative Humidity'],
    p: ['Pressure'],
    wd: ['Wind Direction'],
    ws: ['Wind Speed'],
  };
  const i = Object.fromEntries(Object.entries(names).map(([k, n]) => [k, column(head, ...n)])) as Record<
    keyof typeof names,
    number
  >;
  const missing = Object.entries(i).find(([, n]) => n < 0);
  if (missing) return noColumn(missing[0]);
  const body = table.slice(3).filter((r) => r.length > 5);
  const minutes = [...new Set(body.slice(0, 8).map((r) => numberIn(r[i.minute])))];
  const stepSeconds = minutes.length > 1 ? 3600 / minutes.length : 3600;
  const steps = (365 * 86_400) / stepSeconds;
  const [zone, local] = [Number(meta('Time Zone')), numberIn(meta('Local Time Zone'))];
  const turn = ((local - zone) * 3600) / stepSeconds;
  const turned = Number.isInteger(turn) && Math.abs(local) <= 14;
  const rows = body.flatMap((r, n): WeatherRow[] => {
    const x = (k: keyof typeof names) => numberIn(r[i[k]]);
    const day = dayOfYear(x('month'), x('day'));
    if (day === undefined) return [];
    const label = Math.floor((day * 86_400 + x('hour') * 3600 + x('minute') * 60) / stepSeconds);
    const slot = turned ? (label + turn + steps) % steps : label;
    return [
      {
        slot,
        line: n + 4,
        ...measured(x),
      },
    ];
  });
  const sunOffset = ((minutes[0] ?? 0) * 60) % stepSeconds;
  const leap = body.findIndex((r) => numberIn(r[i.month]) === 2 && numberIn(r[i.day]) === 29);
  return {
    raw: {
      name: `NSRDB ${meta('Location ID')}`,
      latitude: Number(meta('Latitude')),
      longitude: Number(meta('Longitude')),
      elevation: Number(meta('Elevation')),
      timeZone: turned ? local : zone,
      stepSeconds,
      sunOffset,
      rows,
      ...(leap < 0 ? {} : { leapLine: leap + 4 }),
    },
  };
}
