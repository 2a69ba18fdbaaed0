import { type Job, makeJob } from '../../jobs/job.ts';
import type { CutInputs } from './result.ts';

export const cutKind = 'materials/cut-plan';
export const cutVersion = 2;

/** The flat pieces of all ducts, and how they lie on the fewest sheets, lengths and bags. */
export const cutJob = (inputs: CutInputs): Job => makeJob(cutKind, cutVersion, inputs, 'short');
