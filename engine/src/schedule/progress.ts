import type { Task } from '../plan/lines.ts';
import type { LearnedPace, TaskDone, Tick } from './result.ts';

/** What the ticks say of the tasks there are. */
export type Progress = {
  readonly done: Readonly<Record<string, TaskDone>>;
  /** Ticks of tasks that are not in the plan: kept, and asked about. */
  readonly unknown: readonly Tick[];
  readonly learned?: LearnedPace;
};

/** Minutes planned for the whole of a task, and its number of parts. */
type Planned = { readonly mean: number; readonly parts: number };

/** How far each task is, and what the crew's own times say of the rest. Ticks come by time. Pure. */
export function progressOf(
  tasks: readonly Task[],
  ticks: readonly Tick[],
  plannedOf: (task: Task) => Planned,
): Progress {
  const byId = new Map(tasks.map((t) => [t.id, t]));
  const shares = new Map<string, number>();
  const done: Record<string, TaskDone> = {};
  const ratios: number[] = [];
  for (const { task: id, share, at, took } of ticks) {
    const task = byId.get(id);
    if (!task) continue;
    const { mean, parts } = plannedOf(task);
    const had = shares.get(id) ?? 0;
    const now = Math.max(had, share);
    shares.set(id, now);
    // A third of nine parts counted today as ten is three whole parts: never more than was done.
    const whole = Math.floor(now * parts + 1e-9);
    if (whole > (done[id]?.parts ?? 0)) done[id] = { parts: whole, of: parts, at };
    if (took !== undefined && now > had && mean > 0) ratios.push(took / (mean * (now - had)));
  }
  const learned = paceFrom(ratios);
  return { done, unknown: ticks.filter((t) => !byId.has(t.task)), ...(learned ? { learned } : {}) };
}

/** Ticks with their time from which a pace is believed. Common practice, no source. */
const fewest = 3;
/** Student's t that four of five cases lie within, by degrees of freedom from 2; standard table, from memory. */
const t80 = [1.886, 1.638, 1.533, 1.476, 1.44, 1.415, 1.397, 1.383, 1.372];

/**
 * What work takes this crew, as a factor on what was planned: the geometric mean of the ratios, with the range in which the mean lies
 * in four of five cases, their logarithms taken as normal. Undefined below three.
 */
export function paceFrom(ratios: readonly number[]): LearnedPace | undefined {
  const n = ratios.length;
  if (n < fewest) return undefined;
  const logs = ratios.map((r) => Math.log(r));
  const mean = logs.reduce((a, b) => a + b, 0) / n;
  const variance = logs.reduce((a, x) => a + (x - mean) ** 2, 0) / (n - 1);
  const half = (t80[n - 3] ?? 1.3) * Math.sqrt(variance / n);
  return { low: Math.exp(mean - half), likely: Math.exp(mean), high: Math.exp(mean + half), from: n };
}
