import type { YearWeather } from '../../climate/result.ts';
import { syntheticYear } from '../../climate/syntheticYear.ts';
import type { WeatherYear } from '../../climate/weather/weatherYear.ts';
import type { YearInputs } from '../../loads/dynamic/yearJob.ts';
import type { Layout, WeatherSteps } from '../../physics/building/index.ts';
import { type HouseYear, yearAnswers } from './answers.ts';
import { houseWeather, leftAlone, loadedLayout, runYear, type YearRun } from './run.ts';

/** The weather year itself; `file` hands over a file of that name or throws. */
export const weatherOfYear = (weather: YearWeather, file: (hash: string) => WeatherYear): WeatherYear =>
  weather.kind === 'file' ? file(weather.blob) : syntheticYear(weather.months, weather.place, weather.seed);

/** A house laid out for its year with as much heat and cold as it takes, for those who run the loop themselves. */
export function houseLayout(inputs: YearInputs): { readonly layout: Layout; readonly steps: WeatherSteps } {
  const none = (): never => {
    throw new RangeError('only a year made from months can be laid out without its file');
  };
  const weather = houseWeather(weatherOfYear(inputs.weather, none), inputs.step, inputs.house.horizon);
  return { layout: loadedLayout(inputs.house, weather), steps: weather.steps };
}

/** The answers of a year and the rows they were read from, both with as much heat and cold as it takes and left to itself. */
export type YearTable = { readonly answers: HouseYear; readonly loaded: YearRun; readonly free: YearRun };

/** Runs the year twice; steps are no longer than the weather's rows. `tell` hears rows of both runs. */
export function yearTable(
  inputs: YearInputs,
  year: WeatherYear,
  tell: (done: number, total: number) => void,
): YearTable {
  const weather = houseWeather(year, Math.min(inputs.step, year.stepSeconds), inputs.house.horizon);
  const rows = weather.monthOfRow.length;
  const layout = loadedLayout(inputs.house, weather);
  const loaded = runYear(inputs.house, weather, layout, (done) => tell(done, 2 * rows));
  const free = runYear(inputs.house, weather, leftAlone(layout), (done) => tell(rows + done, 2 * rows));
  return { answers: yearAnswers(inputs.house, loaded, free), loaded, free };
}
