import type { ResolvedProject } from '@kneewall/project';
import { type Job, makeJob } from '../../jobs/job.ts';
import type { HeatGiven } from './logHours.ts';

export const logFitKind = 'commissioning/log-fit';
export const logFitVersion = 2;

/** A log, how it is read (so that another reading is another job), and what the plan lends. */
export type LogFitInputs = { readonly blob: string; readonly read: unknown; readonly given: HeatGiven };

/** The job that works out what a log teaches. */
export const logFitJob = (inputs: LogFitInputs): Job => makeJob(logFitKind, logFitVersion, inputs, 'short');

/** How the log of an entry is read, for keys. */
export function readingOfLog(log: ResolvedProject['logs'][string], site: ResolvedProject['site']): unknown {
  const { clock, days, decimal, columns } = log;
  return { clock, days: days ?? null, decimal: decimal ?? null, columns, zone: [site.timeZone, site.longitude] };
}
