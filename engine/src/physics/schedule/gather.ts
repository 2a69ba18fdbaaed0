import { listByTime, ranksOf } from './justify.kernel.ts';
import type { WorkLayout } from './layout.ts';
import { generate, lateness, newRoom } from './place.kernel.ts';

/**
 * The same plan with less going to and fro: work that was left for other work by the same hands is brought together where all
 * is still done as soon and no deadline is missed by more. `taskOf` [n]: pieces of one task have the same number.
 */
export function gathered(w: WorkLayout, starts: Int32Array, taskOf: ArrayLike<number>): Int32Array {
  const room = newRoom(w);
  const rank = new Int32Array(w.n);
  ranksOf(w, rank);
  const late = lateness(w, starts);
  let best = Int32Array.from(starts);
  let left = breaksOf(w, best, taskOf);
  for (let improved = true; improved && left.length > 0; ) {
    improved = false;
    const list = new Int32Array(w.n);
    listByTime(w, best, false, rank, room.keys, list);
    for (const { before, piece } of left) {
      for (const order of [behind(w, list, piece, before), ahead(w, list, before, piece)]) {
        if (!order) continue;
        const trial = new Int32Array(w.n);
        const end = generate(w, order, room, trial);
        if (end > (starts[w.n - 1] ?? 0) || lateness(w, trial) > late) continue;
        const fewer = breaksOf(w, trial, taskOf);
        if (fewer.length >= left.length) continue;
        best = trial;
        left = fewer;
        improved = true;
        break;
      }
      if (improved) break;
    }
  }
  return best;
}

type Break = { readonly before: number; readonly piece: number };

/** Where a task goes on only after other work that its own people, place or tools have begun meanwhile. */
function breaksOf(w: WorkLayout, starts: Int32Array, taskOf: ArrayLike<number>): Break[] {
  const found: Break[] = [];
  for (let piece = 0; piece < w.n; piece++) {
    for (let k = w.beforeFrom[piece] ?? 0; k < (w.beforeFrom[piece + 1] ?? 0); k++) {
      const before = w.before[k] ?? 0;
      if (taskOf[before] !== taskOf[piece]) continue;
      const from = w.table[before]?.end[starts[before] ?? 0] ?? 0;
      if (begunBetween(w, starts, taskOf, piece, from, starts[piece] ?? 0)) found.push({ before, piece });
    }
  }
  return found;
}

function begunBetween(
  w: WorkLayout,
  starts: Int32Array,
  taskOf: ArrayLike<number>,
  piece: number,
  from: number,
  to: number,
): boolean {
  for (let j = 0; j < w.n; j++) {
    const s = starts[j] ?? 0;
    if (s >= from && s < to && taskOf[j] !== taskOf[piece] && shares(w, j, piece)) return true;
  }
  return false;
}

function shares(w: WorkLayout, i: number, j: number): boolean {
  for (let a = w.needFrom[i] ?? 0; a < (w.needFrom[i + 1] ?? 0); a++)
    for (let b = w.needFrom[j] ?? 0; b < (w.needFrom[j + 1] ?? 0); b++) if (w.needOf[a] === w.needOf[b]) return true;
  return false;
}

/** The list with a piece moved forward to right behind another; nothing where something before it stands between. */
function behind(w: WorkLayout, list: Int32Array, piece: number, other: number): Int32Array | undefined {
  const at = list.indexOf(other);
  const between = list.slice(at + 1, list.indexOf(piece));
  if (between.some((j) => comesBefore(w, j, piece))) return undefined;
  return moved(list, piece, at + 1);
}

/** The list with a piece moved back to right ahead of another; nothing where something after it stands between. */
function ahead(w: WorkLayout, list: Int32Array, piece: number, other: number): Int32Array | undefined {
  const to = list.indexOf(other);
  const between = list.slice(list.indexOf(piece) + 1, to);
  if (between.some((j) => comesBefore(w, piece, j))) return undefined;
  return moved(list, piece, to - 1);
}

function moved(list: Int32Array, piece: number, to: number): Int32Array {
  const others = list.filter((i) => i !== piece);
  return Int32Array.from({ length: list.length }, (_, a) => (a === to ? piece : (others[a > to ? a - 1 : a] ?? 0)));
}

function comesBefore(w: WorkLayout, first: number, then: number): boolean {
  for (let k = w.beforeFrom[then] ?? 0; k < (w.beforeFrom[then + 1] ?? 0); k++) if (w.before[k] === first) return true;
  return false;
}
