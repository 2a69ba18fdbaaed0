import type { YearWeather } from '../../climate/result.ts';
import { type Job, makeJob } from '../../jobs/job.ts';
import type { HouseInputs } from './houseInputs.ts';

/** A house, the year of weather it stands in, and steps of so many seconds. */
export type YearInputs = { readonly house: HouseInputs; readonly weather: YearWeather; readonly step: number };

/** Steps of a year, s. */
export const yearStep = 900;

export const houseYearKind = 'loads/year';
export const houseYearVersion = 6;

export const houseYearJob = (inputs: YearInputs): Job => makeJob(houseYearKind, houseYearVersion, inputs, 'short');
