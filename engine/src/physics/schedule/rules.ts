import type { WorkLayout } from './layout.ts';
import { headsAndTails } from './times.kernel.ts';

/** Keys by which pieces are chosen, less is sooner; each rule of long standing (Kolisch 1996, from memory). */
export const ruleNames = [
  'latest start',
  'latest end',
  'least slack',
  'most after',
  'most work after',
  'first start',
] as const;
export type RuleName = (typeof ruleNames)[number];

/** Keys [n] of one rule; what the priority of a piece says comes before it. */
export function keysOf(w: WorkLayout, rule: RuleName): Float64Array {
  const { head, lastStart, lastEnd } = headsAndTails(w, w.horizon);
  const followers = rule === 'most after' || rule === 'most work after' ? allAfter(w) : [];
  const work = (i: number) => {
    let units = 0;
    for (let k = w.needFrom[i] ?? 0; k < (w.needFrom[i + 1] ?? 0); k++)
      units += (w.needUnits[k] ?? 0) / Math.max(1, w.capacity[w.needOf[k] ?? 0] ?? 1);
    return units * (w.length[i] ?? 0);
  };
  const key = (i: number): number => {
    if (rule === 'latest start') return lastStart[i] ?? 0;
    if (rule === 'latest end') return lastEnd[i] ?? 0;
    if (rule === 'least slack') return (lastStart[i] ?? 0) - (head[i] ?? 0);
    if (rule === 'first start') return head[i] ?? 0;
    const set = [...(followers[i] ?? [])];
    return rule === 'most after' ? -set.length : -set.reduce((a, j) => a + work(j), work(i));
  };
  const byPriority = 4 * (w.horizon + 1) * w.n;
  return Float64Array.from({ length: w.n }, (_, i) => key(i) - (w.priority[i] ?? 0) * byPriority);
}

/** A list of pieces by keys that keeps to what comes before what. */
export function listByKeys(w: WorkLayout, keys: Float64Array): Int32Array {
  const open = Int32Array.from({ length: w.n }, (_, i) => (w.beforeFrom[i + 1] ?? 0) - (w.beforeFrom[i] ?? 0));
  const may = new Set<number>();
  open.forEach((k, i) => {
    if (k === 0) may.add(i);
  });
  const list = new Int32Array(w.n);
  for (let a = 0; a < w.n; a++) {
    let best = -1;
    for (const i of may) if (best < 0 || before(keys, i, best)) best = i;
    may.delete(best);
    list[a] = best;
    for (let k = w.afterFrom[best] ?? 0; k < (w.afterFrom[best + 1] ?? 0); k++) {
      const j = w.after[k] ?? 0;
      const left = (open[j] ?? 0) - 1;
      open[j] = left;
      if (left === 0) may.add(j);
    }
  }
  return list;
}

const before = (keys: Float64Array, i: number, j: number): boolean => {
  const d = (keys[i] ?? 0) - (keys[j] ?? 0);
  return d < 0 || (d === 0 && i < j);
};

function allAfter(w: WorkLayout): Set<number>[] {
  const sets = Array.from({ length: w.n }, () => new Set<number>());
  for (let a = w.n - 1; a >= 0; a--) {
    const i = w.order[a] ?? 0;
    for (let k = w.afterFrom[i] ?? 0; k < (w.afterFrom[i + 1] ?? 0); k++) {
      const j = w.after[k] ?? 0;
      sets[i]?.add(j);
      for (const x of sets[j] ?? []) sets[i]?.add(x);
    }
  }
  return sets;
}
