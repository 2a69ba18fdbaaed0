import type { ResolvedProject } from '@kneewall/project';
import type { YearWeather } from '../../climate/result.ts';
import type { UnitModel } from '../../equipment/result.ts';
import { type Job, makeJob } from '../../jobs/job.ts';
import type { HeatGiven } from './logHours.ts';

export const logFitKind = 'commissioning/log-fit';
export const logFitVersion = 6;

/** The plan's house as it was entered, before anything that was learned, and the year its weather is filled up from. */
export type PlannedHouse = {
  readonly house: Omit<ResolvedProject['house'], 'learned'>;
  readonly site: ResolvedProject['site'];
  readonly pressure: number;
  /** °C, mean of each month. */
  readonly months: readonly number[];
  readonly weather: YearWeather;
};

/** The plan's unit as its sheet has it, Pa of the place, and W it draws at rest. */
export type PlannedUnit = { readonly model: UnitModel; readonly pressure: number; readonly standby: number };

/** A log, how it is read (so that another reading is another job), and what the plan lends. */
export type LogFitInputs = {
  readonly blob: string;
  readonly read: unknown;
  readonly given: Pick<HeatGiven, 'airflow' | 'density'> & { readonly unit?: PlannedUnit };
  readonly plan?: PlannedHouse;
};

/** The job that works out what a log teaches. */
export const logFitJob = (inputs: LogFitInputs): Job => makeJob(logFitKind, logFitVersion, inputs, 'short');

/** How the log of an entry is read, for keys. */
export function readingOfLog(log: ResolvedProject['logs'][string], site: ResolvedProject['site']): unknown {
  const { clock, days, decimal, columns } = log;
  return { clock, days: days ?? null, decimal: decimal ?? null, columns, zone: [site.timeZone, site.longitude] };
}
