import { type Problem, refused } from '@kneewall/project';
import { daysInMonth, monthStart } from '../../physics/calendar.ts';

/** The quantities a weather year is made of, each in its own unit. */
export const weatherColumns = [
  'dryBulb',
  'dewPoint',
  'relativeHumidity',
  'pressure',
  'windSpeed',
  'windDirection',
  'ghi',
  'dni',
  'dhi',
] as const;
export type WeatherColumn = (typeof weatherColumns)[number];

/** What only some files hold: cover by cloud, 0 to 1, and heat from the sky, W/m². */
export const spareColumns = ['cloud', 'skyInfrared'] as const;
export type SpareColumn = (typeof spareColumns)[number];

/** One row of a file: which step of the year it is, its line in the file, and its numbers. */
export type WeatherRow = { readonly slot: number; readonly line: number } & {
  readonly [K in WeatherColumn]: number;
} & { readonly [K in SpareColumn]?: number };

export type LaidOut = Readonly<Record<WeatherColumn, Float64Array>> & {
  readonly [K in SpareColumn]?: Float64Array;
};

/** Day of a year without leap day, 0 to 364; undefined for 29 February and for dates that do not exist. */
export function dayOfYear(month: number, day: number): number | undefined {
  const start = monthStart[month - 1];
  const days = daysInMonth[month - 1];
  return start === undefined || days === undefined || day < 1 || day > days ? undefined : start + day - 1;
}

/** Rows laid into the steps of a year, each step exactly once. Missing and repeated steps are named by line. */
export function layOut(rows: readonly WeatherRow[], steps: number): { columns?: LaidOut; problems: Problem[] } {
  const held = spareColumns.filter((c) => rows.some((row) => row[c] !== undefined));
  const columns = Object.fromEntries([...weatherColumns, ...held].map((c) => [c, new Float64Array(steps)])) as Record<
    WeatherColumn | SpareColumn,
    Float64Array
  >;
  const line = new Int32Array(steps);
  for (const row of rows) {
    if (line[row.slot])
      return {
        problems: [
          refused(
            'duplicate-hours',
            ['line', row.line],
            `The same hour stands here and on line ${line[row.slot]}. Keep one of the two.`,
          ),
        ],
      };
    line[row.slot] = row.line;
    // Some files write -0.0 at night; adding nothing makes it 0.
    for (const c of weatherColumns) columns[c][row.slot] = row[c] + 0;
    for (const c of held) columns[c][row.slot] = row[c] ?? Number.NaN;
  }
  const gap = line.indexOf(0);
  if (gap < 0) return { columns, problems: [] };
  const missing = line.reduce((n, l) => n + (l === 0 ? 1 : 0), 0);
  const after = gap > 0 ? ` The first gap comes after line ${line[gap - 1]}.` : '';
  return {
    problems: [
      refused(
        'missing-hours',
        ['line', gap > 0 ? (line[gap - 1] ?? 0) : 0],
        `${missing} of ${steps} steps of the year are missing.${after} Get the whole file again.`,
        { found: steps - missing, allowed: steps },
      ),
    ],
  };
}

/** A cell as a number; NaN where it is none. */
export const numberIn = (cell: string | undefined): number =>
  cell === undefined || cell === '' ? Number.NaN : Number(cell);
