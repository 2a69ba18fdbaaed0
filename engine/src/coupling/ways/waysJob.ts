import type { AirModel } from '../../air/result.ts';
import { type Job, makeJob, type PlainParts } from '../../jobs/job.ts';
import type { UnitYearInputs } from '../season/unitYearJob.ts';

/** The year with the unit, and the ducts in their best stocked sizes where there are such. */
export type WaysInputs = UnitYearInputs & { readonly best?: AirModel };

export const waysKind = 'coupling/ways';
export const waysVersion = 2;

export const waysJob = (inputs: WaysInputs, kept?: PlainParts): Job =>
  makeJob(waysKind, waysVersion, inputs, 'short', kept);
