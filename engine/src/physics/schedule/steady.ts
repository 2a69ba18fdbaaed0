import { listByTime, ranksOf } from './justify.kernel.ts';
import type { WorkLayout } from './layout.ts';
import { earliest, firstFit, generateBack, hold, lastFit, lateness, newRoom, type Room } from './place.kernel.ts';
import { headsAndTails, lastStartBy } from './times.kernel.ts';

/** Starts wished for, [n] ticks; -1 where a piece was in no plan before. */
type Wishes = ArrayLike<number> & Iterable<number>;

/** Pieces that do not start when wished, and by how many ticks together. */
export function strayed(wishes: Wishes, starts: Int32Array): { readonly moved: number; readonly ticks: number } {
  let moved = 0;
  let ticks = 0;
  for (let i = 0; i < starts.length; i++) {
    const wish = wishes[i] ?? -1;
    const off = wish < 0 ? 0 : Math.abs((starts[i] ?? 0) - wish);
    if (off > 0) moved++;
    ticks += off;
  }
  return { moved, ticks };
}

/**
 * A plan that ends by `by`, misses no deadline more than `starts` does, and strays little from the wishes: fewest pieces
 * moved, then fewest ticks, of the plans tried. Tried are the old plan shifted to where it fits, the same with only its
 * first part kept, and each of them with one piece after the other brought home.
 */
export function steadied(w: WorkLayout, starts: Int32Array, wishes: Wishes, by: number): Int32Array {
  const room = newRoom(w);
  const rank = new Int32Array(w.n);
  ranksOf(w, rank);
  const late = lateness(w, starts);
  const tried: Int32Array[] = [Int32Array.from(starts)];
  const end = Math.max(1, ...wishes);
  // Whole, then less and less of it: what comes first is what people have set their minds on.
  for (const part of [1, 0.9, 0.75, 0.6, 0.45, 0.3, 0.15]) {
    const kept = shifted(
      w,
      starts,
      Int32Array.from(wishes, (x) => (x > part * end ? -1 : x)),
      rank,
      room,
    );
    if ((kept[w.n - 1] ?? 0) <= by && lateness(w, kept) <= late) tried.push(kept);
  }
  for (const plan of tried) bringHome(w, plan, wishes, by, room);
  return tried.reduce((a, b) => (better(wishes, b, a) ? b : a));
}

function better(wishes: Wishes, a: Int32Array, b: Int32Array): boolean {
  const [x, y] = [strayed(wishes, a), strayed(wishes, b)];
  return x.moved < y.moved || (x.moved === y.moved && x.ticks < y.ticks);
}

/** Serial generation in the order wished for, nothing before its wish; the rest in the plan's order, as early as it fits. */
function shifted(w: WorkLayout, plan: Int32Array, wishes: Wishes, rank: Int32Array, room: Room): Int32Array {
  const order = Int32Array.from(plan, (s, i) => {
    const wish = wishes[i] ?? -1;
    return wish < 0 ? s : wish;
  });
  const list = new Int32Array(w.n);
  listByTime(w, order, false, rank, room.keys, list);
  const out = new Int32Array(w.n);
  room.use.set(w.base);
  const placed = new Uint8Array(w.n);
  const place = (i: number): void => {
    if (placed[i] === 1) return;
    placed[i] = 1;
    for (let k = w.beforeFrom[i] ?? 0; k < (w.beforeFrom[i + 1] ?? 0); k++) place(w.before[k] ?? 0);
    const s = firstFit(w, room.use, i, Math.max(earliest(w, i, out), wishes[i] ?? -1));
    out[i] = s;
    if (s <= w.horizon) hold(w, room.use, i, s, w.table[i]?.end[s] ?? s, 1);
  };
  // The end of all work has no wish of its own: it comes last.
  for (const i of list) if (i !== w.n - 1) place(i);
  place(w.n - 1);
  return out;
}

/** Piece by piece to its wish, or as near as it fits between what comes before and after, until nothing moves. */
function bringHome(w: WorkLayout, starts: Int32Array, wishes: Wishes, by: number, room: Room): void {
  room.use.set(w.base);
  const end = (i: number) => w.table[i]?.end[starts[i] ?? 0] ?? 0;
  for (let i = 0; i < w.n; i++) hold(w, room.use, i, starts[i] ?? 0, end(i), 1);
  const { lastEnd } = headsAndTails(w, by);
  for (let pass = 0, moved = true; moved && pass < 10; pass++) {
    moved = false;
    for (let a = 0; a < w.n; a++) {
      const i = w.order[pass % 2 === 0 ? w.n - 1 - a : a] ?? 0;
      const wish = wishes[i] ?? -1;
      if (wish < 0 || starts[i] === wish) continue;
      hold(w, room.use, i, starts[i] ?? 0, end(i), -1);
      const to = nearest(w, starts, i, wish, Math.max(lastEnd[i] ?? 0, end(i)), room.use);
      if (Math.abs(to - wish) < Math.abs((starts[i] ?? 0) - wish)) {
        starts[i] = to;
        moved = true;
      }
      hold(w, room.use, i, starts[i] ?? 0, end(i), 1);
    }
  }
  for (let k = w.beforeFrom[w.n - 1] ?? 0, last = 0; k < (w.beforeFrom[w.n] ?? 0); k++) {
    last = Math.max(last, end(w.before[k] ?? 0));
    starts[w.n - 1] = last;
  }
}

/** The start nearest to the wish at which piece i fits between its neighbours and ends by `lastEnd`. */
function nearest(w: WorkLayout, starts: Int32Array, i: number, wish: number, lastEnd: number, use: Int32Array): number {
  const was = starts[i] ?? 0;
  const from = earliest(w, i, starts);
  let to = lastEnd;
  for (let k = w.afterFrom[i] ?? 0; k < (w.afterFrom[i + 1] ?? 0); k++) {
    const j = w.after[k] ?? 0;
    if (j !== w.n - 1) to = Math.min(to, (starts[j] ?? 0) - (w.afterLag[k] ?? 0));
  }
  const last = lastStartBy(w, i, to);
  const later = firstFit(w, use, i, Math.max(from, wish));
  const sooner = lastFit(w, use, i, Math.min(to, w.table[i]?.end[Math.max(0, wish)] ?? to));
  let best = was;
  for (const s of [later, sooner]) if (s >= from && s <= last && Math.abs(s - wish) < Math.abs(best - wish)) best = s;
  return best;
}

/** How many ticks later each piece can start, all later ones as late as they fit in the plan's order, and all done by its end. */
export function slackOf(w: WorkLayout, starts: Int32Array): Int32Array {
  const room = newRoom(w);
  const rank = new Int32Array(w.n);
  ranksOf(w, rank);
  const list = new Int32Array(w.n);
  listByTime(w, starts, true, rank, room.keys, list);
  const late = Int32Array.from(starts);
  if (!generateBack(w, list, starts[w.n - 1] ?? 0, room, late)) return new Int32Array(w.n);
  return late.map((s, i) => s - (starts[i] ?? 0));
}
