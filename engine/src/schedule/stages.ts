import { meanOf } from '../physics/schedule/index.ts';
import type { Task } from '../plan/lines.ts';
import { partsOf } from './pieces.ts';
import { type Progress, progressOf } from './progress.ts';
import type { WorkFrame } from './result.ts';
import type { WorkStage } from './workJob.ts';

/** Days of ticks that are gone through one by one; what is older is taken together. */
const daysMost = 8;

/** How far the work is, by a crew's ticks up to now. */
export const progressBy = (frame: WorkFrame, tasks: readonly Task[], ticks = frame.ticks): Progress =>
  progressOf(tasks, ticks, (t) => ({ mean: (meanOf(t.duration) * frame.pace) / 60, parts: partsOf(t, frame.pace) }));

/** How it stood after each day with ticks, and now: with what is put off, and from when it is wanted. */
export function stagesOf(frame: WorkFrame, tasks: readonly Task[]): WorkStage[] {
  const { putOff, planFrom = 0 } = frame;
  const ids = new Set(tasks.map((t) => t.id));
  const ticks = frame.ticks.filter((t) => ids.has(t.task));
  const off = putOff.filter((p) => ids.has(p.task));
  if (ticks.length === 0 && off.length === 0 && planFrom <= 0) return [];
  const days = [...new Set(ticks.map((t) => t.day))].slice(-daysMost, -1);
  const earlier = days.map((day): WorkStage => {
    const until = ticks.filter((t) => t.at <= Math.max(...ticks.filter((x) => x.day === day).map((x) => x.at)));
    return { now: until.at(-1)?.at ?? 0, done: progressBy(frame, tasks, until).done };
  });
  const { done, learned } = progressBy(frame, tasks, ticks);
  const release: Record<string, number> = {};
  for (const { task, until } of off) release[task] = Math.max(until, release[task] ?? 0);
  const now = Math.max(0, planFrom, ticks.at(-1)?.at ?? 0);
  return [...earlier, { now, done, ...(off.length > 0 ? { release } : {}), ...(learned ? { learned } : {}) }];
}
