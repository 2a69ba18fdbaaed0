import { type Job, makeJob } from '../jobs/job.ts';
import type { WorkSpec } from '../physics/schedule/work.ts';
import type { Unplaced, WorkFrame } from './result.ts';

export const workPlanKind = 'schedule/work-plan';
export const workPlanVersion = 1;

export type WorkInputs = {
  readonly spec: WorkSpec;
  readonly attic: WorkFrame['attic'];
  /** What is left out before anything is planned. */
  readonly unplaced: readonly Unplaced[];
  readonly mostPeople: number;
  readonly doneBy?: number;
};

/** Which work fits which window. */
export const workPlanJob = (inputs: WorkInputs): Job => makeJob(workPlanKind, workPlanVersion, inputs, 'short');
