import { gathered } from './gather.ts';
import { inspectWork } from './inspectWork.ts';
import { type Laid, type LaidTasks, layTasks } from './layTasks.ts';
import { type Effort, type SolvedPlan, solvePlan } from './solvePlan.ts';
import { slackOf, steadied, strayed } from './steady.ts';
import { type WhyThen, whyThen } from './whyThen.ts';
import { tickUp } from './windows.ts';
import type { WorkProblem, WorkSpec } from './work.ts';

/** A piece in its place. Minutes from the plan's start; on the clock, so longer than its work where heat slows it. */
export type PlacedPiece = {
  readonly task: string;
  readonly piece: string;
  readonly from: number;
  readonly to: number;
  /** Minutes that it can start later, all else following as late as it fits, with everything done in time. */
  readonly slack: number;
  readonly why: WhyThen;
};

export type WorkPlan = {
  /** By start; what is done is left out. */
  readonly pieces: readonly PlacedPiece[];
  /** When all is done, the least it could be as far as proved, and the difference, minutes. */
  readonly end: number;
  readonly bound: number;
  readonly gap: number;
  /** No plan ends sooner (in ticks of `step`). Never where a deadline is missed. */
  readonly proved: boolean;
  /** Tasks that miss their deadline, with the minute they are finished. */
  readonly late: readonly { readonly task: string; readonly deadline: number; readonly end: number }[];
  /** Proved that the deadlines cannot all be kept, those left out that could not be kept alone. */
  readonly lateProved: boolean;
  /** Pieces that start at another time than in the plan before. */
  readonly moved: number;
  readonly effort: { readonly plans: number; readonly conflicts: number };
};

export type PlanOptions = {
  readonly effort?: Effort;
  /** The plan before: what need not move stays. */
  readonly before?: readonly { readonly task: string; readonly piece: string; readonly from: number }[];
  /** Minutes later than the soonest end that are taken so that less moves. Default 0. */
  readonly worthMoving?: number;
  /** A minute by which it is soon enough: up to it less moves rather than all ends sooner. Left out: the soonest end. */
  readonly soonEnough?: number;
};

/** A plan, or why there is none; problems of grade `late` come with a plan. */
export type PlannedWork = { readonly plan?: WorkPlan; readonly problems: readonly WorkProblem[] };

/**
 * Plans work: pieces that cannot be broken off within windows, people, places and tools shared, waits, deliveries, deadlines;
 * all done as soon as can be. Deadlines first, then the end of all work, then staying with the plan before, or in
 * a first plan work that is not left for other work, then priorities. Deterministic: limits are counts. Never throws for what a person can enter.
 */
export function planWork(spec: WorkSpec, options: PlanOptions = {}): PlannedWork {
  const wrong = inspectWork(spec);
  if (wrong.length > 0) return { problems: wrong };
  const x = layTasks(spec);
  if ('refused' in x) return { problems: x.refused };
  const solved = solvePlan(x.w, options.effort);
  if (solved.end > x.w.horizon) return { problems: [...x.problems, doesNotFit(x, solved)] };
  const wishes = wishesOf(x, options);
  const later = solved.end + Math.floor((options.worthMoving ?? 0) / x.ticks.step);
  const by = Math.min(x.w.horizon, Math.max(later, tickUp(options.soonEnough ?? 0, x.ticks.step)));
  const starts = options.before ? steadied(x.w, solved.starts, wishes, by) : gathered(x.w, solved.starts, tasksOf(x));
  return { plan: told(spec, x, solved, starts, strayed(wishes, starts).moved), problems: x.problems };
}

/** The number of the task that each piece belongs to. */
function tasksOf({ laid, w }: LaidTasks): Int32Array {
  const tasks = new Map([...new Set(laid.map((l) => l.task))].map((task, k) => [task, k]));
  return Int32Array.from({ length: w.n }, (_, i) => tasks.get(laid[i]?.task as Laid['task']) ?? -1);
}

function wishesOf(x: LaidTasks, { before }: PlanOptions): Int32Array {
  const at = new Map((before ?? []).map((p) => [JSON.stringify([p.task, p.piece]), tickUp(p.from, x.ticks.step)]));
  return Int32Array.from({ length: x.w.n }, (_, i) => {
    const { task, piece } = x.laid[i] ?? {};
    return piece && !piece.pinned ? (at.get(JSON.stringify([task?.id, piece.id])) ?? -1) : -1;
  });
}

function doesNotFit(x: LaidTasks, { starts }: SolvedPlan): WorkProblem {
  const names = new Set(x.laid.flatMap(({ task }, i) => ((starts[i] ?? 0) > x.w.horizon ? [task.id] : [])));
  return { code: 'does-not-fit', grade: 'refused', names: [...names] };
}

function told(spec: WorkSpec, x: LaidTasks, solved: SolvedPlan, starts: Int32Array, moved: number): WorkPlan {
  const { w, laid, ticks } = x;
  const { step } = ticks;
  const slack = slackOf(w, starts);
  const resources = spec.resources.map((r) => r.id);
  const why = whyThen(x, starts, resources, tickUp(spec.now ?? 0, step));
  const end = (starts[w.n - 1] ?? 0) * step;
  const endAt = (i: number) => (w.table[i]?.end[starts[i] ?? 0] ?? 0) * step;
  const pieces = laid.flatMap(({ task, piece }, i): PlacedPiece[] => {
    if (!piece) return [];
    const from = (starts[i] ?? 0) * step;
    const because = why[i] ?? { because: 'now', names: [] };
    return [{ task: task.id, piece: piece.id, from, to: endAt(i), slack: (slack[i] ?? 0) * step, why: because }];
  });
  const ends = new Map<string, number>();
  laid.forEach(({ task }, i) => {
    ends.set(task.id, Math.max(endAt(i), ends.get(task.id) ?? 0));
  });
  const late = spec.tasks.flatMap((t) => {
    const at = ends.get(t.id);
    return t.deadline !== undefined && at !== undefined && at > t.deadline
      ? [{ task: t.id, deadline: t.deadline, end: at }]
      : [];
  });
  const bound = Math.min(end, solved.bound * step);
  return {
    pieces: pieces.sort((a, b) => a.from - b.from || a.to - b.to || (a.task < b.task ? -1 : 1)),
    end,
    bound,
    gap: end - bound,
    proved: solved.proved && end === bound,
    late,
    lateProved: solved.lateProved,
    moved,
    effort: { plans: solved.made, conflicts: solved.conflicts },
  };
}
