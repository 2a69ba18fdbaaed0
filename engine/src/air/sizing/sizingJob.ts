import { type Job, makeJob, type PlainParts } from '../../jobs/job.ts';
import type { DuctSizingInput } from './setUp.ts';

export const sizingKind = 'air/sizing';
export const sizingVersion = 3;

/** The best stocked size of every duct, with its proof. */
export const sizingJob = (input: DuctSizingInput, kept?: PlainParts): Job =>
  makeJob(sizingKind, sizingVersion, input, 'short', kept);
