import {
  type Chances,
  chanceBy,
  chancesOf,
  checkPlan,
  type Effort,
  type PlacedPiece,
  type WorkSpec,
} from '../physics/schedule/index.ts';
import { windowsToAdd } from './addWindows.ts';
import { atticOver } from './atticOver.ts';
import { replan } from './replan.ts';
import type { WorkAnswers } from './result.ts';
import type { WorkInputs } from './workJob.ts';

const lives = 1000;
/** For a plan that stands for seconds. */
const firstLives = 200;
const atOnce: Effort = { plans: 60, conflicts: 0 };

/** A plan as it is found at once, by the same rules as the best one. */
export const firstPlan = (inputs: WorkInputs): WorkAnswers => planned(inputs, () => undefined, atOnce, firstLives);

/** The plan of what fits, and what does not, with why. A task that finds no place takes those with it that wait for it. */
export const planJob = (inputs: WorkInputs, tell: Tell): WorkAnswers => planned(inputs, tell, undefined, lives);

type Tell = (done: number, total: number) => void;

function planned(inputs: WorkInputs, tell: Tell, effort: Effort | undefined, lives: number): WorkAnswers {
  tell(0, 2);
  const { spec, whole, plan, unplaced, moved, margin } = replan(
    inputs.spec,
    inputs.unplaced,
    inputs.stages ?? [],
    effort,
  );
  tell(1, 2);
  const windows = (inputs.windows ?? []).filter((w) => plan.pieces.some((p) => w.from <= p.from && p.from < w.to));
  const chances = chancesOf(spec, plan.pieces, { lives, spans: windows });
  tell(2, 2);
  const share = (k: number) => chances?.ends[Math.floor(k * (lives - 1))] ?? plan.end;
  const all = unplaced.length === 0 && chances !== undefined;
  return {
    parts: plan.pieces.map((p) => partOf(p, spec, chances)),
    unplaced,
    toAdd: windowsToAdd(whole, plan.pieces, unplaced, inputs),
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
    windows: windows.map(({ id, from, to }, k) => ({
      window: id,
      inTime: chances?.inTime[k] ?? 1,
      tasks: [...new Set(plan.pieces.filter((p) => from <= p.from && p.from < to).map((p) => p.task))],
    })),
    moved,
    margin,
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
