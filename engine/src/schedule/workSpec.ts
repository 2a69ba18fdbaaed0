import type { WorkPiece, WorkSpec, WorkTask } from '../physics/schedule/work.ts';
import type { Task } from '../plan/lines.ts';
import { orderOf } from './order.ts';
import type { Unplaced, WorkFrame } from './result.ts';
import type { WorkInputs } from './workJob.ts';

/** Minutes of a part of work that may be left at any time, about. */
const anyPart = 30;

/** Tasks and windows as the planner takes them; what recurs every season is not planned. */
export function workInputs(frame: WorkFrame, all: readonly Task[]): WorkInputs {
  const tasks = all.filter((t) => t.holdPoint !== 'season');
  const order = orderOf(tasks);
  const tooFew = tasks.filter((t) => t.people > frame.crew).map((t): Unplaced => ({ task: t.id, because: 'too-few' }));
  const unplaced = withFollowers(
    tooFew,
    tasks.map((t) => t.id),
    order,
  );
  const left = new Set(unplaced.map((u) => u.task));
  const placed = tasks.filter((t) => !left.has(t.id));
  return {
    spec: specOf(frame, placed, order),
    attic: frame.attic,
    unplaced,
    mostPeople: Math.max(0, ...tasks.map((t) => t.people)),
    ...(frame.doneBy === undefined ? {} : { doneBy: frame.doneBy }),
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

function specOf(frame: WorkFrame, tasks: readonly Task[], order: ReadonlyMap<string, readonly string[]>): WorkSpec {
  const free = frame.windows.map(({ from, to }) => ({ from, to }));
  const heat = frame.attic.flatMap(({ from, minutes }) =>
    minutes.map((minutesAnHour, h) => ({ from: from + 60 * h, to: from + 60 * h + 60, minutesAnHour })),
  );
  return {
    horizon: Math.ceil(Math.max(...frame.windows.map((w) => w.to)) / 5) * 5,
    resources: [
      {
        id: 'people',
        units: frame.crew,
        there: free,
        fewer: frame.windows.flatMap((w) =>
          w.people < frame.crew ? [{ from: w.from, to: w.to, units: w.people }] : [],
        ),
      },
      ...(['attic', 'roof', 'outside', 'inside'] as const).map((id) => ({ id, units: 1 })),
    ],
    calendars: [
      { id: 'free', open: free },
      { id: 'attic', heat: heat.filter((h) => h.minutesAnHour < 60) },
    ],
    tasks: tasks.map((t): WorkTask => {
      const place = t.place ?? 'attic';
      return {
        id: t.id,
        pieces: piecesOf(t, frame.pace),
        needs: [
          { resource: 'people', units: t.people },
          { resource: place, units: 1 },
        ],
        calendars: place === 'attic' ? ['free', 'attic'] : ['free'],
        after: (order.get(t.id) ?? []).map((task) => ({ task })),
      };
    }),
  };
}

function piecesOf({ duration, parts = 1 }: Task, pace: number): WorkPiece[] {
  const n = Math.max(1, parts === 'any' ? Math.ceil((duration.likely * pace) / 60 / anyPart) : Math.floor(parts));
  const each = (seconds: number) => (seconds * pace) / 60 / n;
  const minutes = { low: each(duration.low), likely: each(duration.likely), high: each(duration.high) };
  return Array.from({ length: n }, (_, i) => ({ id: String(i + 1), minutes }));
}
