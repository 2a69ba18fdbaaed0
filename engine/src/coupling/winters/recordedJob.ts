import type { RecordedWinters } from '../../climate/result.ts';
import { type Job, makeJob, type PlainParts } from '../../jobs/job.ts';
import type { PowerYearInputs } from '../power/powerYearJob.ts';

/** House, unit, ducts and power in winters that were measured. */
export type RecordedInputs = Omit<PowerYearInputs, 'weather'> & { readonly recorded: RecordedWinters };

export const recordedKind = 'coupling/recorded-winters';
export const recordedVersion = 1;

export const recordedJob = (inputs: RecordedInputs, kept?: PlainParts): Job =>
  makeJob(recordedKind, recordedVersion, inputs, 'long', kept);
