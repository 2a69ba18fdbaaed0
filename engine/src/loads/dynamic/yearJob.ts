import type { ClimateMonth } from '../../climate/result.ts';
import { type Place, syntheticYear } from '../../climate/syntheticYear.ts';
import type { WeatherYear } from '../../climate/weather/weatherYear.ts';
import { type Job, makeJob } from '../../jobs/job.ts';
import type { HouseInputs } from './houseInputs.ts';
import { freeYear, houseWeather, loadedYear, type YearRun } from './houseYear.ts';
import { type HouseYear, yearAnswers } from './yearAnswers.ts';

/** The weather of a year: a file beside the project, read as the project says, or a year made from twelve months. */
export type YearWeather =
  | { readonly kind: 'file'; readonly blob: string; readonly read: unknown }
  | { readonly kind: 'months'; readonly months: readonly ClimateMonth[]; readonly place: Place; readonly seed: number };

export type YearInputs = { readonly house: HouseInputs; readonly weather: YearWeather; readonly step: number };

export const houseYearKind = 'loads/year';
export const houseYearVersion = 1;

export const houseYearJob = (inputs: YearInputs): Job => makeJob(houseYearKind, houseYearVersion, inputs, 'short');

/** The weather year itself; `file` hands over a file of that name or throws. */
export const weatherOfYear = (weather: YearWeather, file: (hash: string) => WeatherYear): WeatherYear =>
  weather.kind === 'file' ? file(weather.blob) : syntheticYear(weather.months, weather.place, weather.seed);

/** The answers of a year and the rows they were read from, both with as much heat and cold as it takes and left to itself. */
export type YearTable = { readonly answers: HouseYear; readonly loaded: YearRun; readonly free: YearRun };

/** Runs the year twice; steps are no longer than the weather's rows. `tell` hears rows of both runs. */
export function yearTable(
  inputs: YearInputs,
  year: WeatherYear,
  tell: (done: number, total: number) => void,
): YearTable {
  const weather = houseWeather(year, Math.min(inputs.step, year.stepSeconds));
  const rows = weather.monthOfRow.length;
  const loaded = loadedYear(inputs.house, weather, (done) => tell(done, 2 * rows));
  const free = freeYear(inputs.house, weather, (done) => tell(rows + done, 2 * rows));
  return { answers: yearAnswers(inputs.house, loaded, free), loaded, free };
}
