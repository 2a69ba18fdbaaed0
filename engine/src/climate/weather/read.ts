import { asked, type Problem, type Project, refused, splitTable } from '@kneewall/project';
import { type RawRead, type RawYear, readPsm, readTmy3 } from './formats.ts';
import { readHourly } from './hourly.ts';
import { inspectYear } from './inspectYear.ts';
import { readPvgisCsv, readPvgisJson } from './pvgis.ts';
import { layOut } from './rows.ts';
import { soundSpares } from './spares.ts';
import type { WeatherYear } from './weatherYear.ts';

type Site = NonNullable<Project['site']>;
type Weather = NonNullable<Site['weather']>;
export type WeatherFormat = NonNullable<Weather['format']>;
export type WeatherRead = { readonly value?: WeatherYear; readonly problems: readonly Problem[] };

const bytesMost = 64 * 1024 * 1024;

/** Which kind of file a text is; `hourly` where it is none that states itself. */
export function sniffWeather(text: string): WeatherFormat {
  const start = text.slice(0, 4000).replace(/^\uFEFF/, '');
  if (/^\s*\{/.test(start)) return 'pvgis-json';
  if (start.includes('time(UTC)') || /^Latitude \(decimal degrees\)/m.test(start)) return 'pvgis-csv';
  if (/^"?Source"?,/.test(start)) return 'psm3';
  return /^Date \(MM\/DD\/YYYY\)/m.test(start) ? 'tmy3' : 'hourly';
}

/**
 * Reads a weather file. Never throws. With a value, `problems` are questions; without one they say what refused it.
 * The format is the project's, else found from the text.
 */
export function readWeather(given: string, weather: Weather, site: Site | undefined): WeatherRead {
  const text = given.replace(/^\uFEFF/, '');
  if (!isText(text)) return no(refused('not-text', [], 'This is no text file. If it is zipped, unpack it first.'));
  if (text.length > bytesMost)
    return no(
      refused('too-large', [], 'A weather year is a few megabytes; this is something else.', {
        found: text.length,
        allowed: bytesMost,
      }),
    );
  if (text.trim() === '') return no(refused('unknown-format', [], 'The file is empty. Get it again.'));
  const format = weather.format ?? sniffWeather(text);
  const read = rawOf(text, format, weather, site);
  return 'problem' in read ? no(read.problem) : yearOf(read.raw, format);
}

/** A station's name may hold a sign that was lost; a file of another kind holds many, or signs no text has. */
function isText(text: string): boolean {
  if (text.includes('\u0000')) return false;
  const start = text.slice(0, 4000);
  let odd = 0;
  for (let i = 0; i < start.length; i++) {
    const code = start.charCodeAt(i);
    if (code === 0xfffd || (code < 32 && code !== 9 && code !== 10 && code !== 13)) odd++;
  }
  return odd < 2 + start.length / 200;
}

const no = (...problems: Problem[]): WeatherRead => ({ problems });

function rawOf(text: string, format: WeatherFormat, weather: Weather, site: Site | undefined): RawRead {
  if (format === 'pvgis-json') return readPvgisJson(text);
  const table = splitTable(text);
  if (format === 'tmy3') return readTmy3(table);
  if (format === 'psm3') return readPsm(table);
  if (format === 'hourly' && (table[0]?.length ?? 0) < 2)
    return {
      problem: refused(
        'unknown-format',
        [],
        'This is no table of hours: its first line has one column. Get the file again.',
      ),
    };
  return format === 'pvgis-csv' ? readPvgisCsv(table) : readHourly(table, weather.columns ?? {}, site);
}

const placeNames = ['latitude', 'longitude', 'elevation', 'timeZone'] as const;

function yearOf(raw: RawYear, format: WeatherFormat): WeatherRead {
  const place = [raw.latitude, raw.longitude, raw.elevation, raw.timeZone];
  if (place.some((x) => !Number.isFinite(x)))
    return no(
      refused(
        'unknown-format',
        ['line', 1],
        'The first lines do not state the place. Is this the kind of file it is said to be?',
      ),
    );
  const [min, max] = [
    [-90, -180, -450, -14],
    [90, 180, 9000, 14],
  ] as const;
  const off = place.findIndex((x, i) => x < (min[i] ?? 0) || x > (max[i] ?? 0));
  if (off >= 0)
    return no(
      refused(
        'impossible-value',
        [placeNames[off] ?? ''],
        'No place on earth has this number. Check the first lines.',
        {
          found: place[off],
          allowed: { min: min[off], max: max[off] },
        },
      ),
    );
  const steps = Math.round((365 * 86_400) / raw.stepSeconds);
  const strays = raw.rows.find((r) => !(Number.isInteger(r.slot) && r.slot >= 0 && r.slot < steps));
  if (strays)
    return no(refused('impossible-value', ['line', strays.line], 'This line lies outside a year of 365 days.'));
  const { columns, problems } = layOut(raw.rows, steps);
  if (!columns) return no(...problems);
  const { rows: _rows, leapLine, ...head } = raw;
  const { year, problems: spare } = soundSpares({ kind: 'weather-year', format, ...head, ...columns });
  const found = [...leapDay(leapLine), ...spare, ...inspectYear(year)];
  return found.some((p) => p.grade === 'refused') ? no(...found) : { value: year, problems: found };
}

/** A plan is made for 365 days; that a day is left out is said. */
const leapDay = (line: number | undefined): Problem[] =>
  line === undefined
    ? []
    : [
        asked(
          'leap-day',
          ['line', line],
          'The file holds a 29 February. It is left out: the plan is made for 365 days.',
        ),
      ];
