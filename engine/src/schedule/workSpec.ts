import type { Waiting } from '../coupling/deliveries/waiting.ts';
import type { WorkSpec, WorkTask } from '../physics/schedule/work.ts';
import type { Task } from '../plan/lines.ts';
import { single } from '../plan/tools.ts';
import { notInTime, releases } from './awaited.ts';
import { calendarsOf } from './calendars.ts';
import { orderOf } from './order.ts';
import { piecesOf } from './pieces.ts';
import type { Unplaced, WorkFrame } from './result.ts';
import { stagesOf } from './stages.ts';
import { lastMinute } from './ticks.ts';
import type { WorkInputs } from './workJob.ts';

/** Whether a task is planned into windows: not what recurs every season, nor what any evening will do for. */
export const takesWindow = (t: Task): boolean => t.holdPoint !== 'season' && t.within === undefined;

/** Tasks and windows as the planner takes them; what recurs every season is not planned. */
export function workInputs(frame: WorkFrame, all: readonly Task[], waiting: readonly Waiting[]): WorkInputs {
  const tasks = all.filter(takesWindow);
  const order = orderOf(tasks);
  const horizon = lastMinute(frame);
  const tooFew = tasks.filter((t) => t.people > frame.crew).map((t): Unplaced => ({ task: t.id, because: 'too-few' }));
  const notTooFew = tasks.filter((t) => t.people <= frame.crew);
  const tooLate = notTooFew.flatMap((t) => notInTime(t.id, waiting, horizon));
  const unplaced = withFollowers(
    [...tooFew, ...tooLate],
    tasks.map((t) => t.id),
    order,
  );
  const left = new Set(unplaced.map((u) => u.task));
  const placed = tasks.filter((t) => !left.has(t.id));
  const stages = stagesOf(frame, tasks);
  return {
    spec: specOf(frame, placed, order, releases(waiting)),
    attic: frame.attic,
    unplaced,
    mostPeople: Math.max(0, ...tasks.map((t) => t.people)),
    ...(frame.doneBy === undefined ? {} : { doneBy: frame.doneBy }),
    windows: frame.windows.map(({ id, from, to, people }) => ({ id, from, to, people })),
    otherDays: { start: frame.start, atticMonths: frame.atticMonths, ...(frame.quiet ? { quiet: frame.quiet } : {}) },
    ...(stages.length > 0 ? { stages } : {}),
  };
}

/** Those tasks and all that wait for one of them. */
export function withFollowers(
  first: readonly Unplaced[],
  ids: readonly string[],
  order: ReadonlyMap<string, readonly string[]>,
): Unplaced[] {
  const out = [...first];
  const gone = new Set(first.map((u) => u.task));
  for (let more = true; more; ) {
    const waits = ids.filter((id) => !gone.has(id) && (order.get(id) ?? []).some((before) => gone.has(before)));
    for (const task of waits) {
      gone.add(task);
      out.push({ task, because: 'waits' });
    }
    more = waits.length > 0;
  }
  return out;
}

function specOf(
  frame: WorkFrame,
  tasks: readonly Task[],
  order: ReadonlyMap<string, readonly string[]>,
  release: ReadonlyMap<string, number>,
): WorkSpec {
  const cures = new Map(tasks.map((t) => [t.id, (t.cures ?? 0) / 60]));
  const shared = single.filter((what) => tasks.filter((t) => t.tools?.includes(what)).length > 1);
  return {
    horizon: Math.ceil(lastMinute(frame) / 5) * 5,
    resources: [
      {
        id: 'people',
        units: frame.crew,
        there: frame.windows.map(({ from, to }) => ({ from, to })),
        fewer: frame.windows.flatMap((w) =>
          w.people < frame.crew ? [{ from: w.from, to: w.to, units: w.people }] : [],
        ),
      },
      // One task at a time in a place: whoever works in the attic has the hatch.
      ...(['attic', 'roof', 'outside', 'inside'] as const).map((id) => ({ id, units: 1 })),
      ...shared.map((id) => ({ id, units: 1 })),
    ],
    calendars: calendarsOf(frame),
    tasks: tasks.map((t): WorkTask => {
      const place = t.place ?? 'attic';
      const from = release.get(t.id);
      return {
        id: t.id,
        pieces: piecesOf(t, frame.pace),
        needs: [
          { resource: 'people', units: t.people },
          { resource: place, units: 1 },
          ...shared.flatMap((what) => (t.tools?.includes(what) ? [{ resource: what, units: 1 }] : [])),
        ],
        calendars: [
          'free',
          ...(place === 'attic' ? ['attic'] : []),
          ...(t.noisy && frame.quiet ? ['quiet'] : []),
          ...(t.needs ?? []).filter((what) => frame.off.some((o) => o.what === what)),
        ],
        after: (order.get(t.id) ?? []).map((task) => {
          const wait = cures.get(task) ?? 0;
          return wait > 0 ? { task, wait } : { task };
        }),
        ...(from !== undefined && from > 0 ? { release: from } : {}),
      };
    }),
  };
}
