import { type Job, makeJob, type PlainParts } from '../../jobs/job.ts';
import type { PowerYearInputs } from '../power/powerYearJob.ts';

export const foresightKind = 'coupling/foresight';
export const foresightVersion = 1;

/** The least that any control could burn in the year on one's own power. Needs a solver from its host. */
export const foresightJob = (inputs: PowerYearInputs, kept?: PlainParts): Job =>
  makeJob(foresightKind, foresightVersion, inputs, 'long', kept);
