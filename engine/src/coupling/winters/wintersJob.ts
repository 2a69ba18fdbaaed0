import type { WintersWeather } from '../../climate/result.ts';
import { type Job, makeJob, type PlainParts } from '../../jobs/job.ts';
import type { PowerYearInputs } from '../power/powerYearJob.ts';

/** House, unit, ducts and power in so many winters. */
export type WintersInputs = Omit<PowerYearInputs, 'weather'> & {
  readonly winters: WintersWeather;
  readonly count: number;
};

export const wintersKind = 'coupling/winters';
export const wintersVersion = 2;

/** How many winters are made: one in ten of them is two. */
export const wintersCount = 20;
/** Steps, s: hours, which a reliability of many winters is screened in. */
export const wintersStep = 3600;

export const wintersJob = (inputs: WintersInputs, kept?: PlainParts): Job =>
  makeJob(wintersKind, wintersVersion, inputs, 'long', kept);
