import { refused } from '@kneewall/project';
import { dewPoint, humidityRatio } from '../../physics/air/index.ts';
import type { RawRead } from './formats.ts';
import { dayOfYear, numberIn, type WeatherRow } from './rows.ts';

type Hour = {
  readonly label: string;
  readonly line: number;
  readonly has: (key: string) => boolean;
  readonly at: (key: string) => number;
};

/** PVGIS typical year as CSV: a heading of its own, rows in UTC, a footer of explanations. */
export function readPvgisCsv(table: readonly (readonly string[])[]): RawRead {
  const start = table.findIndex((r) => r[0] === 'time(UTC)');
  if (start < 0)
    return {
      problem: refused(
        'missing-column',
        ['column', 'time(UTC)'],
        'The heading of the hourly rows is missing. Get the file again.',
      ),
    };
  const head = table[start] ?? [];
  const hours = table.slice(start + 1).flatMap((r, n): Hour[] =>
    /^\d{8}:\d{4}$/.test(r[0] ?? '')
      ? [
          {
            label: r[0] ?? '',
            line: start + n + 2,
            has: (key) => head.includes(key),
            at: (key) => numberIn(r[head.indexOf(key)]),
          },
        ]
      : [],
  );
  const said = (name: string) =>
    Number(
      table
        .slice(0, start)
        .map((r) => r.join(' '))
        .find((l) => l.startsWith(name))
        ?.split(':')
        .at(-1)
        ?.trim() ?? Number.NaN,
    );
  const offset = said('Irradiance Time Offset (h)');
  return yearOf(hours, said('Latitude'), said('Longitude'), said('Elevation'), Number.isFinite(offset) ? offset : 0);
}

type Json = {
  inputs?: { location?: Record<string, number> };
  outputs?: { tmy_hourly?: (Record<string, unknown> | null)[] };
} | null;

/** The same as JSON. */
export function readPvgisJson(text: string): RawRead {
  let parsed: Json;
  try {
    parsed = JSON.parse(text) as Json;
  } catch {
    return { problem: refused('not-json', [], 'The file is cut short or damaged. Get it again.') };
  }
  const place = parsed?.inputs?.location ?? {};
  const list = parsed?.outputs?.tmy_hourly;
  if (!Array.isArray(list))
    return {
      problem: refused(
        'missing-column',
        ['outputs', 'tmy_hourly'],
        'The file holds no hourly rows. Get the typical year as JSON.',
      ),
    };
  const hours = list.map(
    (r, n): Hour => ({
      label: String(r?.['time(UTC)']),
      line: n + 1,
      has: (key) => r?.[key] !== undefined,
      at: (key) => (typeof r?.[key] === 'number' ? r[key] : Number.NaN),
    }),
  );
  const offset = Number(place.irradiance_time_offset ?? 0);
  return yearOf(hours, Number(place.latitude), Number(place.longitude), Number(place.elevation), offset);
}

/** UTC rows turned to local standard time and rolled round the end of the year. */
function yearOf(
  hours: readonly Hour[],
  latitude: number,
  longitude: number,
  elevation: number,
  offsetHours: number,
): RawRead {
  const timeZone = Math.round(longitude / 15);
  const rows = hours.flatMap(({ label, line, has, at }): WeatherRow[] => {
    const day = dayOfYear(Number(label.slice(4, 6)), Number(label.slice(6, 8)));
    if (day === undefined) return [];
    const slot = (day * 24 + Number(label.slice(9, 11)) + timeZone + 8760) % 8760;
    const [t, rh, p] = [at('T2m'), at('RH') / 100, at('SP')];
    return [
      {
        slot,
        line,
        dryBulb: t,
        dewPoint: dewPoint(humidityRatio({ t, rh }, p), p),
        relativeHumidity: rh,
        pressure: p,
        windSpeed: at('WS10m'),
        windDirection: at('WD10m'),
        ghi: at('G(h)'),
        dni: at('Gb(n)'),
        dhi: at('Gd(h)'),
        ...(has('IR(h)') ? { skyInfrared: at('IR(h)') } : {}),
      },
    ];
  });
  const leap = hours.find(({ label }) => label.slice(4, 8) === '0229');
  return {
    raw: {
      name: 'PVGIS typical year',
      latitude,
      longitude,
      elevation,
      timeZone,
      stepSeconds: 3600,
      sunOffset: offsetHours * 3600,
      rows,
      ...(leap === undefined ? {} : { leapLine: leap.line }),
    },
  };
}
