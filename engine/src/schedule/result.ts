import type { QuantityKind, Range } from '@kneewall/project';
import type { Delivery, Stock } from '../materials/result.ts';
import type { Awaited } from '../paperwork/result.ts';
import type { Outcome } from '../plan/outcome.ts';
import type { ResultBase } from '../plan/resultBase.ts';

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
  /** Minutes that each clock hour of a hot day leaves in the attic, by month: [12][24]. */
  readonly atticMonths: readonly (readonly number[])[];
  /** The last minute on which work may end. */
  readonly doneBy?: number;
  /** Hours that clocks are ahead of Greenwich. */
  readonly ahead: number;
  /** What is ticked off, by time; what is put off; from when a person wants it planned. */
  readonly ticks: readonly Tick[];
  readonly putOff: readonly { readonly task: string; readonly until: number }[];
  readonly planFrom?: number;
  /** Minutes of every day without noise; from above to lies across midnight. */
  readonly quiet?: { readonly from: number; readonly to: number };
  readonly off: readonly { readonly what: 'power' | 'water'; readonly from: number; readonly to: number }[];
  readonly deliveries: readonly WorkDelivery[];
  /** Permits and inspections that are waited for, with the minute from which they are in hand. */
  readonly papers: readonly {
    readonly id: string;
    readonly name: string;
    readonly kind: Awaited['kind'];
    readonly at: number;
  }[];
  /** Lines of the shopping list that are here already: `here` by line, and what entries stand for. */
  readonly here: readonly string[];
  readonly stock: readonly Stock[];
};

/** A task, or the first share of it, done at a minute; `took`: minutes of work. */
export type Tick = {
  readonly path: string;
  readonly task: string;
  readonly day: string;
  readonly at: number;
  readonly share: number;
  readonly took?: number;
};

/** Arrives at a minute, with things named or what comes from a kind of shop; without a day nothing of it counts as come. */
export type WorkDelivery = Pick<Delivery, 'id' | 'name' | 'brings' | 'goods' | 'amounts'> & { readonly at?: number };

/** A good of which deliveries bring too little, in its unit: what must come and what does, who needs it, where that is entered. */
export type Shortage = {
  readonly id: string;
  readonly what: string;
  readonly kind: QuantityKind;
  readonly wanted: number;
  readonly comes: number;
  readonly tasks: readonly string[];
  readonly at: string;
};

/** How far a task is: whole parts, and the minute at which the last of them ended. */
export type TaskDone = { readonly parts: number; readonly of: number; readonly at: number };

/** What the crew took against what was planned: least, middle and most in four of five cases, from so many ticks. */
export type LearnedPace = Range & { readonly from: number };

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
 * than there are. `does-not-fit`: the windows are used up. `circle`: it waits for itself. `delivery`: what it needs comes after
 * the last window. `no-day`: what it needs comes with a delivery that has no day. `paper`:
 * a permit comes after the last window. `waits`: what comes before it has no place.
 */
export type Unplaced = {
  readonly task: string;
  readonly because: 'no-window' | 'too-few' | 'does-not-fit' | 'waits' | 'circle' | 'delivery' | 'no-day' | 'paper';
  /** `circle`: tasks that wait for each other, in that order. `delivery`, `no-day`, `paper`: those it waits for. */
  readonly names?: readonly string[];
  readonly longest?: number;
  readonly needed?: number;
};

/**
 * A window that would hold parts of a task without a place, minutes from the plan's start, where everything placed stays. `missing`:
 * what no window of those there are has for it: hours long enough, cool hours in the attic, people, or time that is not used up.
 */
export type WindowToAdd = {
  readonly task: string;
  readonly from: number;
  readonly to: number;
  readonly people: number;
  readonly parts: number;
  readonly missing: 'length' | 'cool' | 'people' | 'time';
};

/** The plan of all work. */
export type WorkAnswers = {
  readonly parts: readonly WorkPart[];
  readonly unplaced: readonly Unplaced[];
  /** One way to give a place to what has none; nothing for what waits for goods or papers, or needs more people than there are. */
  readonly toAdd: readonly WindowToAdd[];
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
  /** Windows with work in them, and the chance that all of it is done or at a safe stop by their end. */
  readonly windows: readonly { readonly window: string; readonly inTime: number; readonly tasks: readonly string[] }[];
  /** Tasks that are planned for another time than before the last tick; nothing where nothing is ticked. */
  readonly moved: readonly string[];
  /** Share of cases in which a part is done within what it is planned with; 0: the mean. */
  readonly margin: number;
};

export type ScheduleResult = ResultBase & {
  readonly frame: Outcome<WorkFrame>;
  readonly work: Outcome<WorkAnswers>;
  /** A plan that keeps to everything and is not the best yet: there until that is found, and nothing is judged by it. */
  readonly first?: WorkAnswers;
  /** With the tasks: their names, how far each is, ticks of no task, pace learned, deliveries that come too late. */
  readonly sum?: {
    readonly names: Readonly<Record<string, string>>;
    readonly done: Readonly<Record<string, TaskDone>>;
    readonly unknown: readonly Tick[];
    readonly learned?: LearnedPace;
    readonly late: readonly { readonly delivery: string; readonly tasks: readonly string[] }[];
    /** Tasks that take no window: within so many days of the end of others. */
    readonly within: readonly { readonly task: string; readonly after: readonly string[]; readonly days: number }[];
    /** Deliveries without a day that a task waits for. */
    readonly undated: readonly { readonly delivery: string; readonly tasks: readonly string[] }[];
    /** Goods of which too little comes. */
    readonly short: readonly Shortage[];
  };
};
