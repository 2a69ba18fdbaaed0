import type { WorkLayout } from './layout.ts';
import type { Times } from './times.kernel.ts';

/**
 * Is more work due in some window than there are units? Each piece counts with the least of it that has to lie there
 * wherever it starts (energetic reasoning; Baptiste, Le Pape and Nuijten 1999). `room` [m][horizon + 2]: units there
 * are before each tick, summed. True: no plan fits the times.
 */
export function tooMuchWork(w: WorkLayout, x: Times, room: Float64Array, by: number): boolean {
  const width = w.horizon + 2;
  for (let a = 0; a < w.n; a++) {
    const t1 = x.head[a]!;
    for (let b = 0; b < w.n; b++) {
      const t2 = Math.min(by, x.lastEnd[b]!);
      if (t2 <= t1) continue;
      for (let r = 0; r < w.m; r++)
        if (workWithin(w, x, r, t1, t2) > room[r * width + t2]! - room[r * width + t1]!) return true;
    }
  }
  return false;
}

function workWithin(w: WorkLayout, x: Times, r: number, t1: number, t2: number): number {
  let work = 0;
  for (let i = 0; i < w.n; i++)
    for (let k = w.needFrom[i]!; k < w.needFrom[i + 1]!; k++) {
      if (w.needOf[k] !== r) continue;
      const left = w.table[i]!.end[x.head[i]!]! - t1;
      const right = t2 - x.lastStart[i]!;
      const least = Math.min(w.length[i]!, left, right, t2 - t1);
      if (least > 0) work += least * w.needUnits[k]!;
    }
  return work;
}

/** Units that are there, and that some piece can use, before each tick, summed: [m][horizon + 2]. */
export function summedRoom(w: WorkLayout): Float64Array {
  const width = w.horizon + 2;
  const room = new Float64Array(w.m * width);
  const useful = new Uint8Array(w.m * (w.horizon + 1));
  markUseful(w, useful, new Uint8Array(w.m * w.classes.length));
  for (let r = 0; r < w.m; r++)
    for (let t = 0; t <= w.horizon; t++) {
      const free = useful[r * (w.horizon + 1) + t]! * (w.capacity[r]! - w.base[r * (w.horizon + 1) + t]!);
      room[r * width + t + 1] = room[r * width + t]! + Math.max(free, 0);
    }
  return room;
}

/** A tick is useful to a resource where a piece that needs it can run over it: too short a window is not. */
function markUseful(w: WorkLayout, useful: Uint8Array, done: Uint8Array): void {
  const width = w.horizon + 1;
  for (let i = 0; i < w.n; i++) {
    const { covers } = w.table[i]!;
    const kind = w.classes.indexOf(w.table[i]!);
    for (let k = w.needFrom[i]!; k < w.needFrom[i + 1]!; k++) {
      const r = w.needOf[k]!;
      if (done[r * w.classes.length + kind] === 1) continue;
      done[r * w.classes.length + kind] = 1;
      for (let t = 0; t < width; t++) if (covers[t]! <= t) useful[r * width + t] = 1;
    }
  }
}

/** Ticks from the start of each piece to the end of all work, at the least: [n]. Calendars left out. */
export function tails(w: WorkLayout): Int32Array {
  const tail = new Int32Array(w.n);
  for (let a = w.n - 1; a >= 0; a--) {
    const i = w.order[a]!;
    let t = 0;
    for (let k = w.afterFrom[i]!; k < w.afterFrom[i + 1]!; k++) t = Math.max(t, w.afterLag[k]! + tail[w.after[k]!]!);
    tail[i] = t + w.length[i]!;
  }
  return tail;
}
