import type { AirModel } from '../../air/ductwork.ts';
import { type Job, makeJob, type PlainParts } from '../../jobs/job.ts';
import type { PowerYearInputs } from '../power/powerYearJob.ts';
import type { UnitYearInputs } from '../season/unitYearJob.ts';

/** The year with the unit, the ducts in their best stocked sizes where there are such, and one's own power where there is. */
export type WaysInputs = UnitYearInputs & { readonly best?: AirModel } & Partial<
    Pick<PowerYearInputs, 'power' | 'standing'>
  >;

export const waysKind = 'coupling/ways';
export const waysVersion = 3;

export const waysJob = (inputs: WaysInputs, kept?: PlainParts): Job =>
  makeJob(waysKind, waysVersion, inputs, 'short', kept);
