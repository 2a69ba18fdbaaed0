import { type Job, makeJob, type PlainParts } from '../../jobs/job.ts';
import type { YearInputs } from '../../loads/dynamic/yearJob.ts';
import type { DuctsInputs } from '../ducted/ductworks.ts';
import type { UnitInputs } from './unitInputs.ts';

/** A house in its year of weather, the unit it has and the ducts that carry its heat. */
export type UnitYearInputs = YearInputs & { readonly unit: UnitInputs; readonly ducts: DuctsInputs };

export const unitYearKind = 'coupling/unit-year';
export const unitYearVersion = 2;

export const unitYearJob = (inputs: UnitYearInputs, kept?: PlainParts): Job =>
  makeJob(unitYearKind, unitYearVersion, inputs, 'short', kept);
