import {
  type Effort,
  meanOf,
  type PlannedWork,
  type PlanOptions,
  planWork,
  type WorkPiece,
  type WorkPlan,
  type WorkProblem,
  type WorkSpec,
} from '../physics/schedule/index.ts';
import { lessMargin, marginShare, withMargin } from './pieces.ts';
import type { LearnedPace, Unplaced } from './result.ts';
import type { WorkStage } from './workJob.ts';
import { withFollowers } from './workSpec.ts';

/** A plan, the spec it is of, what found no place, and the tasks that stand at another time than before. */
export type Replanned = {
  readonly spec: WorkSpec;
  /** Of all tasks as it stands now, placed or not. */
  readonly whole: WorkSpec;
  readonly plan: WorkPlan;
  readonly unplaced: readonly Unplaced[];
  readonly moved: readonly string[];
  /** Share of cases in which a part is done within what it is planned with; 0: planned with the mean. */
  readonly margin: number;
};

const nothing: WorkPlan = {
  pieces: [],
  end: 0,
  bound: 0,
  gap: 0,
  proved: true,
  late: [],
  lateProved: false,
  moved: 0,
  effort: { plans: 0, conflicts: 0 },
};
/** Of the plans on the way to today's: good enough to hold on to. */
const onTheWay = { plans: 200, conflicts: 200 };

/**
 * The plan as it was before anything was ticked, then day by day with what was ticked by then, each holding on to the one before: what
 * need not move stays, up to the end that was planned before.
 */
export function replan(
  spec: WorkSpec,
  unplaced: readonly Unplaced[],
  stages: readonly WorkStage[],
  effort?: Effort,
): Replanned {
  const given = effort ? { effort } : {};
  let now = { ...placed(spec, unplaced, given), whole: spec, moved: [] as readonly string[] };
  stages.forEach((stage, k) => {
    const last = k === stages.length - 1;
    const whole = specAt(spec, stage);
    const found = placed(whole, unplaced, {
      ...(last ? given : { effort: effort ?? onTheWay }),
      before: now.plan.pieces,
      soonEnough: now.plan.end,
    });
    now = { ...found, whole, moved: movedIn(now.plan, found.plan) };
  });
  return now;
}

const movedIn = (before: WorkPlan, after: WorkPlan): string[] => {
  const at = new Map(before.pieces.map((p) => [JSON.stringify([p.task, p.piece]), p.from]));
  const other = after.pieces.filter((p) => at.get(JSON.stringify([p.task, p.piece])) !== p.from);
  return [...new Set(other.map((p) => p.task))];
};

/** The spec as it stood at a stage: done parts done, nothing before its now, the rest at the pace learned. */
function specAt(spec: WorkSpec, { now, done, release = {}, learned }: WorkStage): WorkSpec {
  return {
    ...spec,
    now: Math.max(0, now),
    tasks: spec.tasks.map((t) => {
      const d = done[t.id];
      const from = Math.max(t.release ?? 0, release[t.id] ?? 0);
      return {
        ...t,
        ...(from > 0 ? { release: from } : {}),
        pieces: t.pieces.map((p, k): WorkPiece => (d && k < d.parts ? { ...p, doneAt: d.at } : atPace(p, learned))),
      };
    }),
  };
}

function atPace(p: WorkPiece, learned: LearnedPace | undefined): WorkPiece {
  if (!learned || typeof p.minutes === 'number') return p;
  const { low, likely, high } = p.minutes;
  return {
    ...p,
    ...withMargin({ low: low * learned.low, likely: likely * learned.likely, high: high * learned.high }),
  };
}

/** Plans, leaves out what has no place, and plans the rest: each turn leaves out at least one task. */
function placed(
  spec: WorkSpec,
  unplaced: readonly Unplaced[],
  options: PlanOptions,
): Omit<Replanned, 'moved' | 'whole'> {
  const order = new Map(spec.tasks.map((t) => [t.id, (t.after ?? []).map((a) => a.task)]));
  let left = [...unplaced];
  let tasks = spec.tasks;
  let share = marginShare;
  let margins = [0.65, 0];
  while (tasks.length > 0) {
    const ids = new Set(tasks.map((t) => t.id));
    const some = {
      ...spec,
      tasks: tasks.map((t) => ({ ...withShare(t, share), after: (t.after ?? []).filter((a) => ids.has(a.task)) })),
    };
    const { plan, problems }: PlannedWork = planWork(some, options);
    if (plan) return { spec: some, plan, unplaced: left, margin: share };
    const tight = squeezed(tasks, problems);
    if (tight) {
      tasks = tight;
      continue;
    }
    const found = problems.flatMap(placeless);
    const next = found.every((u) => u.because === 'does-not-fit') ? margins.find((m) => m < share) : undefined;
    if (next !== undefined) {
      share = next;
      continue;
    }
    if (share !== marginShare) {
      // Less margin does not make it fit either: what is left out is left out with all of it.
      share = marginShare;
      margins = [];
    }
    const first = found.length > 0 ? found : tasks.map((t): Unplaced => ({ task: t.id, because: 'does-not-fit' }));
    const isDone = (id: string) => tasks.find((t) => t.id === id)?.pieces.every((p) => p.doneAt !== undefined) === true;
    const gone = withFollowers(
      once(first),
      tasks.flatMap((t) => (isDone(t.id) ? [] : [t.id])),
      order,
    );
    left = [...left, ...gone];
    const names = new Set(gone.map((u) => u.task));
    tasks = tasks.filter((t) => !names.has(t.id));
  }
  return { spec: { ...spec, tasks }, plan: nothing, unplaced: left, margin: share };
}

/** A task planned with another margin; 0: with the mean. */
function withShare(t: WorkSpec['tasks'][number], share: number): WorkSpec['tasks'][number] {
  if (share === marginShare) return t;
  return { ...t, pieces: t.pieces.map((p) => ({ ...p, ...lessMargin(p, share) })) };
}

/** Where no window holds a part with its margin, what margin there is room for, down to none; undefined where that helps nobody. */
function squeezed(tasks: WorkSpec['tasks'], problems: readonly WorkProblem[]): WorkSpec['tasks'] | undefined {
  let helps = false;
  const room = new Map(
    problems.flatMap((p) => (p.code === 'no-window' && p.task ? [[p.task, p.minutes ?? 0] as const] : [])),
  );
  const tight = tasks.map((t) => {
    const longest = room.get(t.id);
    if (longest === undefined) return t;
    const pieces = t.pieces.map((p): WorkPiece => {
      const least = typeof p.minutes === 'number' ? p.minutes : meanOf(p.minutes);
      const planned = p.planned ?? least;
      if (p.doneAt !== undefined || longest < least || longest >= planned) return p;
      helps = true;
      return { ...p, planned: longest };
    });
    return { ...t, pieces };
  });
  return helps ? tight : undefined;
}

const once = (list: readonly Unplaced[]): Unplaced[] =>
  list.filter((u, i) => list.findIndex((v) => v.task === u.task) === i);

function placeless({ code, grade, task, names, minutes, needed }: WorkProblem): Unplaced[] {
  if (grade !== 'refused') return [];
  if (code === 'no-window' && task !== undefined)
    return [{ task, because: 'no-window', longest: minutes ?? 0, needed: needed ?? 0 }];
  if (code === 'circle') return names.map((id) => ({ task: id, because: 'circle', names }));
  return (task === undefined ? names : [task]).map((id) => ({ task: id, because: 'does-not-fit' }));
}
