import { type Job, makeJob, type PlainParts } from '../jobs/job.ts';
import type { WorkSpec } from '../physics/schedule/work.ts';
import type { LearnedPace, TaskDone, Unplaced, WorkFrame } from './result.ts';

export const workPlanKind = 'schedule/work-plan';
export const workPlanVersion = 4;

export type WorkInputs = {
  readonly spec: WorkSpec;
  readonly attic: WorkFrame['attic'];
  /** What is left out before anything is planned. */
  readonly unplaced: readonly Unplaced[];
  readonly mostPeople: number;
  readonly doneBy?: number;
  /** Windows whose ends are asked about. */
  readonly windows?: readonly Pick<WorkFrame['windows'][number], 'id' | 'from' | 'to' | 'people'>[];
  /** For windows that are not there: the plan's first day, attic hours by month, hours of quiet. */
  readonly otherDays?: Pick<WorkFrame, 'start' | 'atticMonths' | 'quiet'>;
  /** How it stood at the end of each day with a tick, and now. None: nothing is ticked, put off or wanted later. */
  readonly stages?: readonly WorkStage[];
};

/** What was done by a minute, before which nothing is planned any more. */
export type WorkStage = {
  readonly now: number;
  readonly done: Readonly<Record<string, TaskDone>>;
  /** Tasks put off, with the minute they wait for. */
  readonly release?: Readonly<Record<string, number>>;
  readonly learned?: LearnedPace;
};

export const firstPlanKind = 'schedule/first-plan';
export const firstPlanVersion = 2;

/** Which work fits which window: the first plan that is found at once, then the best one. */
export function workPlanJobs(inputs: WorkInputs): readonly [first: Job, best: Job] {
  const kept: PlainParts = new WeakMap();
  return [
    makeJob(firstPlanKind, firstPlanVersion, inputs, 'quick', kept),
    makeJob(workPlanKind, workPlanVersion, inputs, 'quick', kept),
  ];
}
