import type { RecordedWinter, YearWeather } from '../../climate/result.ts';
import type { WeatherYear } from '../../climate/weather/weatherYear.ts';
import { daysInMonth, monthStart } from '../../physics/calendar.ts';
import { nothingKept, type Span } from '../power/powerRun.ts';
import type { RecordedInputs } from './recordedJob.ts';
import { columns, type Winter, winterOn } from './winterRows.ts';

/** What winters that were measured come to, each under its name, so that a promise reads "in N of M recorded winters". */
export type Recorded = {
  /** Months of a winter, 0 to 11, in the order of time. */
  readonly months: readonly number[];
  readonly winters: readonly (Winter & Pick<RecordedWinter, 'id' | 'name'>)[];
  readonly generator: boolean;
};

/** Winters run over these days of their file: a file of one calendar year holds the end of one winter and the beginning of the next. */
function spanOf(months: readonly number[]): Span {
  return {
    firstDay: monthStart[months[0] ?? 0] ?? 0,
    days: months.reduce((sum, m) => sum + (daysInMonth[m] ?? 30), 0),
  };
}

/** Files `from` up to `to`, a row each: the columns. `yearFor` hands over a file's year or throws. */
export function recordedRows(
  inputs: RecordedInputs,
  yearFor: (inputs: { readonly weather: YearWeather }) => WeatherYear,
  from: number,
  to: number,
  tell: (done: number) => void,
): readonly (readonly number[])[] {
  const span = spanOf(inputs.recorded.months);
  return inputs.recorded.files.slice(from, to).map((file, i) => {
    const { winter } = winterOn(inputs, yearFor(file), span, nothingKept());
    tell(i + 1);
    return columns.map((name) => winter[name]);
  });
}

export function recordedAnswers(
  { recorded: { files, months }, power }: RecordedInputs,
  rows: readonly (readonly number[])[],
): Recorded {
  return {
    months,
    generator: power.generator !== undefined,
    winters: rows.map((row, n) => {
      const numbers = Object.fromEntries(columns.map((name, i) => [name, row[i] ?? Number.NaN])) as Winter;
      return { ...numbers, id: files[n]?.id ?? '', name: files[n]?.name ?? '' };
    }),
  };
}
