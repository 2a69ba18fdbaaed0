import type { Outcome } from '../plan/outcome.ts';
import type { ResultBase } from '../plan/trade.ts';

/** A stretch of free time: minutes from the plan's start, and who is there. */
export type WorkWindow = {
  readonly id: string;
  readonly day: string;
  readonly from: number;
  readonly to: number;
  readonly people: number;
};

/** What is known of people and time, before any task. */
export type WorkFrame = {
  /** The day at whose midnight, by the clock, minutes begin to count. */
  readonly start: string;
  readonly windows: readonly WorkWindow[];
  readonly crew: number;
  /** How long work takes this crew, against two handy people. */
  readonly pace: number;
  /** Minutes that each clock hour leaves in the attic, for each day of a window. */
  readonly attic: readonly { readonly from: number; readonly minutes: readonly number[] }[];
  /** The last minute on which work may end. */
  readonly doneBy?: number;
  /** Hours that clocks are ahead of Greenwich. */
  readonly ahead: number;
};

/** A part of a task in its window, minutes from the plan's start. It ends at a safe stop. */
export type WorkPart = {
  readonly task: string;
  /** From 1, and how many there are. */
  readonly part: number;
  readonly parts: number;
  readonly from: number;
  readonly to: number;
  /** Minutes that it can start later with everything done in time. */
  readonly slack: number;
  /** Shares of a thousand lives in which it makes everything late, and in which it runs past its window. */
  readonly decides: number;
  readonly overruns: number;
};

/**
 * A task that has no place. `no-window`: a part of it is longer than any window, minutes. `too-few`: it needs more people
 * than there are. `does-not-fit`: the windows are used up. `waits`: what comes before it has no place.
 */
export type Unplaced = {
  readonly task: string;
  readonly because: 'no-window' | 'too-few' | 'does-not-fit' | 'waits';
  readonly longest?: number;
  readonly needed?: number;
};

/** The plan of all work. */
export type WorkAnswers = {
  readonly parts: readonly WorkPart[];
  readonly unplaced: readonly Unplaced[];
  /** When all that has a place is done, the least it could be, and whether that is proved, minutes. */
  readonly end: number;
  readonly bound: number;
  readonly proved: boolean;
  /** Ends that one, five and nine of ten lives do not go beyond; above the last window: it found none any more. */
  readonly ends: { readonly early: number; readonly middle: number; readonly late: number };
  /** Chance of being done by the day entered, all of it. */
  readonly chance?: number;
  /** What an independent check of the plan found wrong. */
  readonly wrong: readonly string[];
  /** Minutes that parts in the attic get beyond what its heat leaves. */
  readonly atticOver: number;
  /** Most people that a task needs. */
  readonly mostPeople: number;
};

export type ScheduleResult = ResultBase & {
  readonly frame: Outcome<WorkFrame>;
  readonly work: Outcome<WorkAnswers>;
};
