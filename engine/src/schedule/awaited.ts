import type { Waiting } from '../coupling/deliveries/waiting.ts';
import { holdPointWords } from '../plan/finding.ts';
import type { Task } from '../plan/lines.ts';
import type { Unplaced, WorkFrame } from './result.ts';

const rank = (point: Task['holdPoint']): number => holdPointWords.indexOf(point);

/** What waits for papers: from the first cut on all of it for a permit, the visit itself for an inspection. */
export const paperWaiting = (tasks: readonly Task[], papers: WorkFrame['papers']): Waiting[] =>
  tasks.flatMap((t) =>
    papers
      .filter((p) => (p.kind === 'permit' ? rank(t.holdPoint) >= rank('cut') : t.id === `paperwork/inspect-${p.id}`))
      .map((p): Waiting => ({ task: t.id, on: 'paper', id: p.id, at: p.at })),
  );

/** A task that waits for what comes after the last window, or on no day that anybody entered. */
export function notInTime(task: string, waiting: readonly Waiting[], horizon: number): Unplaced[] {
  const own = waiting.filter((w) => w.task === task);
  const undated = own.filter((w) => w.at === undefined).map((w) => w.id);
  if (undated.length > 0) return [{ task, because: 'no-day', names: undated }];
  const late = own.filter((w) => w.at !== undefined && w.at >= horizon);
  const [first] = late;
  return first ? [{ task, because: first.on, names: late.filter((w) => w.on === first.on).map((w) => w.id) }] : [];
}

/** The minute from which all that each task waits for is there. */
export function releases(waiting: readonly Waiting[]): ReadonlyMap<string, number> {
  const from = new Map<string, number>();
  for (const { task, at = 0 } of waiting) from.set(task, Math.max(at, from.get(task) ?? 0));
  return from;
}
