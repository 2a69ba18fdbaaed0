import type { WorkLayout } from './layout.ts';
import { firstFit, hold } from './place.kernel.ts';
import { fullPace } from './tables.kernel.ts';

/** One life of a plan: what comes in is fixed, what comes out is written over by each. */
export type Life = {
  readonly w: WorkLayout;
  /** Pieces in the order of the plan, which is kept. */
  readonly list: Int32Array;
  readonly pace: readonly Uint8Array[];
  /** Ticks of work at full pace that each piece really takes; below 0: it keeps its table's end. */
  readonly length: Float64Array;
  readonly use: Int32Array;
  readonly starts: Int32Array;
  readonly ends: Int32Array;
  /** 1 where a piece ran past its window. */
  readonly over: Uint8Array;
  /** The piece that each waited for last; -1: none. */
  readonly waited: Int32Array;
  /** Start of the latest piece on each resource. */
  readonly begun: Int32Array;
};

/** Lives the plan once. `use` is the base before and after. Gives the end of all work, horizon + 1 where something found no window. */
export function live(x: Life): number {
  const { w, list, starts, ends, begun } = x;
  begun.fill(0);
  for (let a = 0; a < w.n; a++) {
    const i = list[a]!;
    const from = readyFrom(x, i);
    const s = firstFit(w, x.use, i, from);
    starts[i] = s;
    ends[i] = s > w.horizon ? s : endOf(x, i, s);
    x.waited[i] = waitedFor(x, i, a);
    for (let k = w.needFrom[i]!; k < w.needFrom[i + 1]!; k++) begun[w.needOf[k]!] = s;
    if (s <= w.horizon) hold(w, x.use, i, s, ends[i]!, 1);
  }
  for (let i = 0; i < w.n; i++) if (starts[i]! <= w.horizon) hold(w, x.use, i, starts[i]!, ends[i]!, -1);
  return ends[w.n - 1]!;
}

/** After what comes before it, and not before the one ahead of it on anything they share. */
function readyFrom({ w, ends, begun }: Life, i: number): number {
  let t = w.release[i]!;
  for (let k = w.beforeFrom[i]!; k < w.beforeFrom[i + 1]!; k++) t = Math.max(t, ends[w.before[k]!]! + w.beforeLag[k]!);
  for (let k = w.needFrom[i]!; k < w.needFrom[i + 1]!; k++) t = Math.max(t, begun[w.needOf[k]!]!);
  return t;
}

/** Ticks are whole: what is left of less than half a tick is not waited for. Past its window it goes on at full pace. */
function endOf(x: Life, i: number, s: number): number {
  x.over[i] = 0;
  if (x.length[i]! < 0 || x.w.length[i] === 0) return x.w.table[i]!.end[s]!;
  const pace = x.pace[i]!;
  let left = x.length[i]! * fullPace;
  let t = s;
  while (t < x.w.horizon && (left > fullPace / 2 || t === s)) {
    const p = pace[t++]!;
    if (p === 0) x.over[i] = 1;
    left -= p === 0 ? fullPace : p;
  }
  return t;
}

/** Of what comes before it, or shares something with it and came before, the one that ended last. */
function waitedFor({ w, list, starts, ends }: Life, i: number, place: number): number {
  let best = -1;
  let last = 0;
  for (let k = w.beforeFrom[i]!; k < w.beforeFrom[i + 1]!; k++) {
    const p = w.before[k]!;
    const t = ends[p]! + w.beforeLag[k]!;
    if (t >= last) {
      last = t;
      best = p;
    }
  }
  for (let a = 0; a < place; a++) {
    const j = list[a]!;
    if (ends[j]! > last && ends[j]! <= starts[i]! && sharesSome(w, i, j)) {
      last = ends[j]!;
      best = j;
    }
  }
  return best;
}

function sharesSome(w: WorkLayout, i: number, j: number): boolean {
  let shared = false;
  for (let a = w.needFrom[i]!; a < w.needFrom[i + 1]!; a++)
    for (let b = w.needFrom[j]!; b < w.needFrom[j + 1]!; b++) if (w.needOf[a] === w.needOf[b]) shared = true;
  return shared;
}

/** Counts the pieces on the way that led to the end of all work. */
export function countWay({ w, waited }: Life, counts: Int32Array): void {
  let i = waited[w.n - 1]!;
  while (i >= 0) {
    counts[i]!++;
    i = waited[i]!;
  }
}
