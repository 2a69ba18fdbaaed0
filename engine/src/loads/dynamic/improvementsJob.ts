import type { YearWeather } from '../../climate/result.ts';
import { type Job, makeJob } from '../../jobs/job.ts';
import type { DayWeather } from './designWeather.ts';
import type { HouseInputs } from './houseInputs.ts';

/** A house, its design days, and the year of weather it stands in. */
export type ImprovementsInputs = {
  readonly house: HouseInputs;
  readonly night: DayWeather;
  readonly day: DayWeather;
  readonly weather: YearWeather;
};

export const improvementsKind = 'loads/improvements';
export const improvementsVersion = 2;

export const improvementsJob = (inputs: ImprovementsInputs): Job =>
  makeJob(improvementsKind, improvementsVersion, inputs, 'long');
