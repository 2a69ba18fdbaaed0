import type { StartTable } from './layout.ts';

/** Work done at full pace in one tick: minutes of work in an hour. */
export const fullPace = 60;

/**
 * Tables for a piece of `length` ticks where each tick lets `pace[t]` minutes of an hour be worked; 0 is shut. The piece
 * runs without a break: it may start only where the ticks from there on stay open until it is done. A piece without length may start
 * at any tick.
 */
export function startTable(pace: Uint8Array, length: number, horizon: number): StartTable {
  const never = horizon + 1;
  const table: StartTable = {
    next: new Int32Array(horizon + 2),
    prev: new Int32Array(horizon + 2),
    end: new Int32Array(horizon + 2),
    covers: new Int32Array(horizon + 2),
  };
  fillNext(pace, length * fullPace, horizon, table);
  const { next, prev, covers, end } = table;
  let last = -1;
  for (let t = 0; t <= never; t++) {
    if (next[t] === t && t < never) last = t;
    prev[t] = last;
  }
  let s = next[0]!;
  for (let t = 0; t <= never; t++) {
    while (s < never && end[s]! <= t) s = next[s + 1]!;
    covers[t] = s;
  }
  return table;
}

/** From the end back to the start: the window of work moves with its start, so each tick is looked at twice. */
function fillNext(pace: Uint8Array, work: number, horizon: number, { next, end }: StartTable): void {
  const never = horizon + 1;
  next[never] = never;
  end[never] = never;
  let done = 0;
  let to = 0;
  let openTo = 0;
  // Ends rise with starts: `to` only moves on.
  for (let s = 0; s <= horizon; s++) {
    if (to < s) {
      to = s;
      done = 0;
    }
    if (openTo < s) openTo = s;
    while (openTo < horizon && pace[openTo]! > 0) openTo++;
    while (done < work && to < horizon) done += pace[to++]!;
    const fits = done >= work && (work === 0 || to <= openTo);
    next[s] = fits ? s : -1;
    end[s] = fits ? to : never;
    if (to > s) done -= pace[s]!;
  }
  for (let s = horizon; s >= 0; s--) {
    if (next[s]! >= 0) continue;
    next[s] = next[s + 1]!;
    end[s] = end[s + 1]!;
  }
}

/** The table of a piece that starts at one tick only and ends at another. */
export function fixedTable(start: number, end: number, horizon: number): StartTable {
  const never = horizon + 1;
  const table: StartTable = {
    next: new Int32Array(horizon + 2).fill(never),
    prev: new Int32Array(horizon + 2).fill(-1),
    end: new Int32Array(horizon + 2).fill(never),
    covers: new Int32Array(horizon + 2).fill(never),
  };
  table.next.fill(start, 0, start + 1);
  table.end.fill(end, 0, start + 1);
  table.prev.fill(start, start);
  table.covers.fill(start, 0, end);
  return table;
}
