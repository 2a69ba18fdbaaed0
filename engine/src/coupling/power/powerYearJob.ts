import { type Job, makeJob, type PlainParts } from '../../jobs/job.ts';
import type { PowerInputs } from '../../offgrid/result.ts';
import type { UnitYearInputs } from '../season/unitYearJob.ts';

/** What a unit draws beside its compressor and fan, W. */
export type StandingDraw = { readonly standby: number; readonly crankcase: number; readonly panHeater: number };

/** House, unit and ducts in their year on their own power. */
export type PowerYearInputs = UnitYearInputs & { readonly power: PowerInputs; readonly standing: StandingDraw };

export const powerYearKind = 'coupling/power-year';
export const powerYearVersion = 3;

export const powerYearJob = (inputs: PowerYearInputs, kept?: PlainParts): Job =>
  makeJob(powerYearKind, powerYearVersion, inputs, 'short', kept);
