import { type Job, makeJob, type PlainParts } from '../../../jobs/job.ts';
import type { GridInputs } from '../../../offgrid/result.ts';
import type { PowerYearInputs } from '../powerYearJob.ts';

/** A house on the grid in its year: tariff, its own panels, and the battery it may have for outages. */
export type GridYearInputs = PowerYearInputs & GridInputs;

export const gridYearKind = 'coupling/grid-year';
export const gridYearVersion = 3;

export const gridYearJob = (inputs: GridYearInputs, kept?: PlainParts): Job =>
  makeJob(gridYearKind, gridYearVersion, inputs, 'short', kept);
