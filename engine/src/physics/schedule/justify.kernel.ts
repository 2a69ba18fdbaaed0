import type { WorkLayout } from './layout.ts';
import { generate, generateBack, type Room } from './place.kernel.ts';

/** Ranks of pieces in `order`, so that ties keep to what comes before what. */
export function ranksOf(w: WorkLayout, rank: Int32Array): void {
  for (let a = 0; a < w.n; a++) rank[w.order[a]!] = a;
}

/** Writes into `list` the pieces by their starts (or ends), ties by rank. `keys` is room of [n]. */
export function listByTime(
  w: WorkLayout,
  starts: Int32Array,
  byEnds: boolean,
  rank: Int32Array,
  keys: Float64Array,
  list: Int32Array,
): void {
  for (let i = 0; i < w.n; i++) {
    const t = byEnds ? w.table[i]!.end[starts[i]!]! : starts[i]!;
    keys[i] = t * w.n + rank[i]!;
  }
  keys.sort();
  for (let a = 0; a < w.n; a++) list[a] = w.order[keys[a]! % w.n]!;
}

/**
 * Forward-backward improvement: everything as late as it fits, then as early, until that gains nothing. `starts` and
 * `list` (its pieces by start) are both changed; the end of all work never grows. Gives that end. Valls, Ballestin and
 * Quintanilla 2005 (from memory).
 */
export function justify(
  w: WorkLayout,
  starts: Int32Array,
  rank: Int32Array,
  room: Room,
  list: Int32Array,
  trial: Int32Array,
): number {
  let best = starts[w.n - 1]!;
  for (let round = 0; round < 8; round++) {
    trial.set(starts);
    listByTime(w, trial, true, rank, room.keys, list);
    if (!generateBack(w, list, best, room, trial)) round = 8;
    else {
      listByTime(w, trial, false, rank, room.keys, list);
      const end = generate(w, list, room, trial);
      if (end > best) round = 8;
      else {
        starts.set(trial);
        if (end === best) round = 8;
        best = end;
      }
    }
  }
  listByTime(w, starts, false, rank, room.keys, list);
  return best;
}
