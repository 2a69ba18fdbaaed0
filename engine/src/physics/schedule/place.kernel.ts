import type { WorkLayout } from './layout.ts';

/** Room for generating plans: units in use, and what is not placed yet. */
export type Room = {
  readonly use: Int32Array;
  readonly keys: Float64Array;
  /** 0: something before it is not placed; 1: may be placed; 2: is. */
  readonly state: Uint8Array;
  readonly soonest: Int32Array;
};

export const newRoom = (w: WorkLayout): Room => ({
  use: new Int32Array(w.base.length),
  keys: new Float64Array(w.n),
  state: new Uint8Array(w.n),
  soonest: new Int32Array(w.n),
});

/** Does piece i, started at `s`, find its units? Gives -1, or the last tick at which it does not. */
export function lastClash(w: WorkLayout, use: Int32Array, i: number, s: number, end: number): number {
  const width = w.horizon + 1;
  let clash = -1;
  for (let k = w.needFrom[i]!; k < w.needFrom[i + 1]!; k++) {
    const r = w.needOf[k]!;
    const most = w.capacity[r]! - w.needUnits[k]!;
    const row = r * width;
    const low = clash >= s ? clash + 1 : s;
    for (let t = end - 1; t >= low; t--)
      if (use[row + t]! > most) {
        clash = t;
        break;
      }
  }
  return clash;
}

/** The first tick at which it does not, or -1. */
function firstClash(w: WorkLayout, use: Int32Array, i: number, s: number, end: number): number {
  const width = w.horizon + 1;
  let clash = -1;
  for (let k = w.needFrom[i]!; k < w.needFrom[i + 1]!; k++) {
    const r = w.needOf[k]!;
    const most = w.capacity[r]! - w.needUnits[k]!;
    const row = r * width;
    const high = clash >= 0 ? clash : end;
    for (let t = s; t < high; t++)
      if (use[row + t]! > most) {
        clash = t;
        break;
      }
  }
  return clash;
}

/** Takes (sign 1) or gives back (-1) what piece i holds from `s` to `end`. */
export function hold(w: WorkLayout, use: Int32Array, i: number, s: number, end: number, sign: number): void {
  const width = w.horizon + 1;
  for (let k = w.needFrom[i]!; k < w.needFrom[i + 1]!; k++) {
    const row = w.needOf[k]! * width;
    const units = sign * w.needUnits[k]!;
    for (let t = s; t < end; t++) use[row + t]! += units;
  }
}

/** The first start of piece i from `from` on that finds its units; horizon + 1 where there is none. */
export function firstFit(w: WorkLayout, use: Int32Array, i: number, from: number): number {
  const { next, end } = w.table[i]!;
  const never = w.horizon + 1;
  let t = from > never ? never : next[from]!;
  while (t < never) {
    const clash = lastClash(w, use, i, t, end[t]!);
    if (clash < 0) return t;
    t = next[clash + 1]!;
  }
  return never;
}

/** The last start of piece i that ends by `by` and finds its units; -1 where there is none. */
export function lastFit(w: WorkLayout, use: Int32Array, i: number, by: number): number {
  const { covers, prev, end } = w.table[i]!;
  let limit = by;
  while (limit >= 0) {
    const t = w.length[i] === 0 ? prev[limit]! : covers[limit]! === 0 ? -1 : prev[covers[limit]! - 1]!;
    if (t < 0) return -1;
    const clash = firstClash(w, use, i, t, end[t]!);
    if (clash < 0) return t;
    limit = clash;
  }
  return -1;
}

/** The first tick at which piece i may start after what comes before it. */
export function earliest(w: WorkLayout, i: number, starts: Int32Array): number {
  let t = w.release[i]!;
  for (let k = w.beforeFrom[i]!; k < w.beforeFrom[i + 1]!; k++) {
    const p = w.before[k]!;
    const ready = w.table[p]!.end[starts[p]!]! + w.beforeLag[k]!;
    if (ready > t) t = ready;
  }
  return t;
}

/** The last tick by which piece i has to end, for what comes after it and its deadline, or as late as it was before. */
function latest(w: WorkLayout, i: number, starts: Int32Array, by: number): number {
  const was = w.table[i]!.end[starts[i]!]!;
  let t = Math.min(by, Math.max(w.due[i]!, was));
  for (let k = w.afterFrom[i]!; k < w.afterFrom[i + 1]!; k++) {
    const ready = starts[w.after[k]!]! - w.afterLag[k]!;
    if (ready < t) t = ready;
  }
  return t;
}

/** Serial generation: pieces in the order of `list`, each as early as it fits. Gives the end of all work. */
export function generate(w: WorkLayout, list: Int32Array, room: Room, starts: Int32Array): number {
  const { use } = room;
  const never = w.horizon + 1;
  use.set(w.base);
  for (let a = 0; a < w.n; a++) {
    const i = list[a]!;
    const s = firstFit(w, use, i, earliest(w, i, starts));
    starts[i] = s;
    if (s < never) hold(w, use, i, s, w.table[i]!.end[s]!, 1);
  }
  return starts[w.n - 1]!;
}

/**
 * A plan with everything as late as it fits within `by`, in the order of `list` from its end; no deadline is missed by
 * more than before. False where something does not fit.
 */
export function generateBack(w: WorkLayout, list: Int32Array, by: number, room: Room, starts: Int32Array): boolean {
  const { use } = room;
  use.set(w.base);
  for (let a = w.n - 1; a >= 0; a--) {
    const i = list[a]!;
    const s = lastFit(w, use, i, latest(w, i, starts, by));
    if (s < w.release[i]!) return false;
    starts[i] = s;
    hold(w, use, i, s, w.table[i]!.end[s]!, 1);
  }
  return true;
}

/**
 * Parallel generation: tick by tick, whatever may start does, the smallest key first. `keys` [n]: less is sooner. Gives
 * the end of all work.
 */
export function generateParallel(w: WorkLayout, keys: Float64Array, room: Room, starts: Int32Array): number {
  const { use, state, soonest } = room;
  const never = w.horizon + 1;
  use.set(w.base);
  state.fill(0);
  let now = 0;
  for (let placed = 0; placed < w.n; placed++) {
    let best = -1;
    // The piece which can start first from now on; of several, the one with the smallest key.
    for (let i = 0; i < w.n; i++) {
      if (state[i] === 2) continue;
      if (state[i] === 0) {
        if (!ready(w, i, state)) continue;
        state[i] = 1;
        soonest[i] = earliest(w, i, starts);
      }
      // What is held only grows: where it found no place before it finds none now.
      soonest[i] = firstFit(w, use, i, Math.max(soonest[i]!, now));
      if (best < 0 || soonest[i]! < soonest[best]! || (soonest[i] === soonest[best] && keys[i]! < keys[best]!))
        best = i;
    }
    const s = soonest[best]!;
    starts[best] = s;
    state[best] = 2;
    if (s < never) {
      hold(w, use, best, s, w.table[best]!.end[s]!, 1);
      now = s;
    }
  }
  return starts[w.n - 1]!;
}

function ready(w: WorkLayout, i: number, state: Uint8Array): boolean {
  let all = true;
  for (let k = w.beforeFrom[i]!; k < w.beforeFrom[i + 1]!; k++) if (state[w.before[k]!] !== 2) all = false;
  return all;
}

/** Ticks by which deadlines are missed, together. */
export function lateness(w: WorkLayout, starts: Int32Array): number {
  let late = 0;
  for (let i = 0; i < w.n; i++) {
    const over = w.table[i]!.end[starts[i]!]! - w.due[i]!;
    if (over > 0) late += over;
  }
  return late;
}
