import type { ResponsesInputs } from '../coupling/asBuilt/system.ts';
import { type Job, makeJob } from '../jobs/job.ts';

export const responsesKind = 'commissioning/responses';
export const responsesVersion = 3;

/** What every reading would show in a visit's state with every cause: some eighty solves, once for a state. */
export const responsesJob = (inputs: ResponsesInputs): Job => makeJob(responsesKind, responsesVersion, inputs, 'short');
