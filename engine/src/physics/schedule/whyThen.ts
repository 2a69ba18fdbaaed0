import type { LaidTasks } from './layTasks.ts';
import { earliest, hold, lastClash } from './place.kernel.ts';

/**
 * Why a piece starts no sooner. `after`: `names` is the task whose end, with its wait, it starts at. `resource`: held then by the tasks in
 * `names`. `window`: its calendars, or what it needs, open no sooner. `release`: the delivery. `now`: nothing keeps it.
 * `kept`: it could be sooner, and stays where it was. `pinned`: it was agreed on or runs.
 */
export type WhyThen = {
  readonly because: 'after' | 'resource' | 'window' | 'release' | 'now' | 'kept' | 'pinned';
  readonly names: readonly string[];
  readonly resource?: string;
};

/** Why each piece of a plan starts when it does, one for each laid piece. `resources` are ids in their order. */
export function whyThen(x: LaidTasks, starts: Int32Array, resources: readonly string[], now: number): WhyThen[] {
  const { w } = x;
  const use = Int32Array.from(w.base);
  for (let i = 0; i < w.n; i++) hold(w, use, i, starts[i] ?? 0, endOf(x, starts, i), 1);
  return x.laid.map(({ piece }, i): WhyThen => {
    if (piece?.pinned) return { because: 'pinned', names: [] };
    const start = starts[i] ?? 0;
    const from = earliest(w, i, starts);
    const first = w.table[i]?.next[Math.min(from, w.horizon + 1)] ?? start;
    if (start > first) return heldOrKept(x, starts, i, use, resources);
    if (first > from) return { because: 'window', names: x.laid[i]?.task.calendars ?? [] };
    const before = binding(x, starts, i, from);
    if (before.length > 0) return { because: 'after', names: before };
    return { because: start > now ? 'release' : 'now', names: [] };
  });
}

const endOf = ({ w }: LaidTasks, starts: Int32Array, i: number): number => w.table[i]?.end[starts[i] ?? 0] ?? 0;

/** Tasks whose end makes a piece wait until `from`. */
function binding(x: LaidTasks, starts: Int32Array, i: number, from: number): string[] {
  const { w } = x;
  const found = new Set<string>();
  for (let k = w.beforeFrom[i] ?? 0; k < (w.beforeFrom[i + 1] ?? 0); k++) {
    const p = w.before[k] ?? 0;
    const task = x.laid[p]?.task.id;
    if (task !== undefined && endOf(x, starts, p) + (w.beforeLag[k] ?? 0) === from) found.add(task);
  }
  return [...found];
}

/** Who holds what piece i would need at the last place before its start; itself taken away first. */
function heldOrKept(
  x: LaidTasks,
  starts: Int32Array,
  i: number,
  use: Int32Array,
  resources: readonly string[],
): WhyThen {
  const { w } = x;
  const start = starts[i] ?? 0;
  hold(w, use, i, start, endOf(x, starts, i), -1);
  const sooner = w.table[i]?.prev[start - 1] ?? -1;
  const clash = sooner < 0 ? -1 : lastClash(w, use, i, sooner, w.table[i]?.end[sooner] ?? 0);
  const r = clash < 0 ? -1 : shortAt(x, i, use, clash);
  hold(w, use, i, start, endOf(x, starts, i), 1);
  if (clash < 0) return { because: 'kept', names: [] };
  const names = new Set<string>();
  x.laid.forEach(({ task }, j) => {
    const needs = task.needs.some((n) => n.resource === resources[r] && n.units > 0);
    if (j !== i && needs && (starts[j] ?? 0) <= clash && clash < endOf(x, starts, j)) names.add(task.id);
  });
  const resource = resources[r];
  return { because: 'resource', names: [...names], ...(resource === undefined ? {} : { resource }) };
}

function shortAt({ w }: LaidTasks, i: number, use: Int32Array, t: number): number {
  for (let k = w.needFrom[i] ?? 0; k < (w.needFrom[i + 1] ?? 0); k++) {
    const r = w.needOf[k] ?? 0;
    if ((use[r * (w.horizon + 1) + t] ?? 0) + (w.needUnits[k] ?? 0) > (w.capacity[r] ?? 0)) return r;
  }
  return -1;
}
