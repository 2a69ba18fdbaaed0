import type { WorkLayout } from './layout.ts';

/** First starts, last starts and last ends of every piece by what comes before and after alone, [n] ticks each. */
export type Times = { readonly head: Int32Array; readonly lastStart: Int32Array; readonly lastEnd: Int32Array };

/**
 * Longest paths through the calendars, resources left out, all work done by `by`. A first start of horizon + 1 or a last
 * start of -1: it cannot be done. Deadlines count.
 */
export function headsAndTails(w: WorkLayout, by: number): Times {
  const head = new Int32Array(w.n);
  const lastStart = new Int32Array(w.n);
  const lastEnd = new Int32Array(w.n);
  const never = w.horizon + 1;
  for (let a = 0; a < w.n; a++) {
    const i = w.order[a]!;
    let t = w.release[i]!;
    for (let k = w.beforeFrom[i]!; k < w.beforeFrom[i + 1]!; k++) {
      const p = w.before[k]!;
      t = Math.max(t, w.table[p]!.end[head[p]!]! + w.beforeLag[k]!);
    }
    head[i] = w.table[i]!.next[Math.min(t, never)]!;
  }
  for (let a = w.n - 1; a >= 0; a--) {
    const i = w.order[a]!;
    let t = Math.min(by, w.due[i]!);
    for (let k = w.afterFrom[i]!; k < w.afterFrom[i + 1]!; k++)
      t = Math.min(t, lastStart[w.after[k]!]! - w.afterLag[k]!);
    lastEnd[i] = t;
    lastStart[i] = lastStartBy(w, i, t);
  }
  return { head, lastStart, lastEnd };
}

/** The last start of piece i whose end is not after `t`; -1 where there is none. */
export function lastStartBy(w: WorkLayout, i: number, t: number): number {
  if (t < 0) return -1;
  const { prev, covers } = w.table[i]!;
  if (w.length[i] === 0) return prev[t]!;
  const c = covers[t]!;
  return c === 0 ? -1 : prev[c - 1]!;
}
