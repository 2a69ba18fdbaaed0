import type { BalancingInputs } from '../../coupling/balancing/system.ts';
import { type Job, makeJob } from '../../jobs/job.ts';

export const balancingKind = 'commissioning/balancing';
export const balancingVersion = 1;

/** Which dampers to move, from the flows of a visit: some hundred solves of the whole network. */
export const balancingJob = (inputs: BalancingInputs): Job => makeJob(balancingKind, balancingVersion, inputs, 'short');
