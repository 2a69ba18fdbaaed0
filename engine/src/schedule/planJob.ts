import {
  type Chances,
  chanceBy,
  chancesOf,
  checkPlan,
  type PlacedPiece,
  planWork,
  type WorkPlan,
  type WorkProblem,
  type WorkSpec,
} from '../physics/schedule/index.ts';
import { atticOver } from './atticOver.ts';
import type { Unplaced, WorkAnswers } from './result.ts';
import type { WorkInputs } from './workJob.ts';
import { withFollowers } from './workSpec.ts';

const lives = 1000;
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

/** The plan of what fits, and what does not, with why. A task that finds no place takes those with it that wait for it. */
export function planJob(inputs: WorkInputs, tell: (done: number, total: number) => void): WorkAnswers {
  tell(0, 2);
  const { spec, plan, unplaced } = planned(inputs);
  tell(1, 2);
  const chances = chancesOf(spec, plan.pieces, { lives });
  tell(2, 2);
  const share = (k: number) => chances?.ends[Math.floor(k * (lives - 1))] ?? plan.end;
  const all = unplaced.length === 0 && chances !== undefined;
  return {
    parts: plan.pieces.map((p) => partOf(p, spec, chances)),
    unplaced,
    end: plan.end,
    bound: plan.bound,
    proved: plan.proved,
    ends: { early: share(0.1), middle: share(0.5), late: share(0.9) },
    ...(inputs.doneBy === undefined
      ? {}
      : { chance: all ? chanceBy(chances, Math.min(inputs.doneBy, spec.horizon)) : 0 }),
    wrong: checkPlan(spec, plan.pieces),
    atticOver: atticOver(spec, plan.pieces, inputs.attic),
    mostPeople: inputs.mostPeople,
  };
}

function partOf(p: PlacedPiece, spec: WorkSpec, chances: Chances | undefined): WorkAnswers['parts'][number] {
  const pieces = spec.tasks.find((t) => t.id === p.task)?.pieces ?? [];
  const lived = chances?.pieces.find((c) => c.task === p.task && c.piece === p.piece);
  return {
    task: p.task,
    part: Number(p.piece),
    parts: pieces.length,
    from: p.from,
    to: p.to,
    slack: p.slack,
    decides: lived?.decides ?? 0,
    overruns: lived?.overruns ?? 0,
  };
}

/** Plans, leaves out what has no place, and plans the rest: each turn leaves out at least one task. */
function planned({ spec, unplaced }: WorkInputs): { spec: WorkSpec; plan: WorkPlan; unplaced: readonly Unplaced[] } {
  const order = new Map(spec.tasks.map((t) => [t.id, (t.after ?? []).map((a) => a.task)]));
  let left = [...unplaced];
  let tasks = spec.tasks;
  while (tasks.length > 0) {
    const { plan, problems } = planWork({ ...spec, tasks });
    if (plan) return { spec: { ...spec, tasks }, plan, unplaced: left };
    const found = problems.flatMap(placeless);
    const first = found.length > 0 ? found : tasks.map((t): Unplaced => ({ task: t.id, because: 'does-not-fit' }));
    const gone = withFollowers(
      once(first),
      tasks.map((t) => t.id),
      order,
    );
    left = [...left, ...gone];
    const names = new Set(gone.map((u) => u.task));
    tasks = tasks.filter((t) => !names.has(t.id));
  }
  return { spec: { ...spec, tasks }, plan: nothing, unplaced: left };
}

const once = (list: readonly Unplaced[]): Unplaced[] =>
  list.filter((u, i) => list.findIndex((v) => v.task === u.task) === i);

function placeless({ code, grade, task, names, minutes, needed }: WorkProblem): Unplaced[] {
  if (grade !== 'refused') return [];
  if (code === 'no-window' && task !== undefined)
    return [{ task, because: 'no-window', longest: minutes ?? 0, needed: needed ?? 0 }];
  return (task === undefined ? names : [task]).map((id) => ({ task: id, because: 'does-not-fit' }));
}
