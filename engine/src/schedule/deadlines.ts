import type { ScheduleResult } from './result.ts';

/** A task that takes no window: the minute from which its days count and its last one, from the plan's start; `done` where it is ticked off. */
export type Deadline = {
  readonly task: string;
  readonly from: number;
  readonly by: number;
  readonly days: number;
  readonly done?: number;
};

/** Deadlines that are known: those of which all that comes before is planned or done. Days are whole, to their midnight. */
export function deadlinesOf({ work, sum }: Pick<ScheduleResult, 'work' | 'sum'>): Deadline[] {
  if (!work.ok || !sum) return [];
  const { parts, unplaced } = work.value;
  const left = new Set(unplaced.map((u) => u.task));
  const ends = (id: string): number[] => [
    ...parts.flatMap((p) => (p.task === id ? [p.to] : [])),
    ...(sum.done[id] ? [sum.done[id].at] : []),
  ];
  return sum.within.flatMap(({ task, after, days }) => {
    const before = after.map((id) => (left.has(id) ? [] : ends(id)));
    if (before.some((all) => all.length === 0)) return [];
    const from = Math.max(...before.flat());
    const by = (Math.floor(from / perDay) + days + 1) * perDay;
    const done = sum.done[task];
    return [{ task, from, by, days, ...(done && done.parts >= done.of ? { done: done.at } : {}) }];
  });
}

const perDay = 1440;
