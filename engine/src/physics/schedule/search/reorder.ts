import type { WorkLayout } from '../layout.ts';
import { below, type Seeded, seeded } from '../seeded.ts';
import { newSearch } from './state.ts';
import { planWithin } from './within.ts';

/** Contradictions spent on one part, and parts that gain nothing before it stops: at least so many, and half as many as pieces. */
const tryMost = 150;
const vainLeast = 20;
/** Pieces by ticks above which a search is too dear to begin anew for every part. */
const widest = 500_000;

/**
 * Shortens a plan part by part: the pieces about some time are free, all others keep their order where they hand units on, and exact
 * search is asked for an end one tick sooner (Godard, Laborie and Nuijten 2005, from memory). For work of few ticks whose units are always
 * there; other work keeps its plan. At most `limit` contradictions; stops at `enough`.
 */
export function reordered(
  w: WorkLayout,
  start: Int32Array,
  enough: number,
  limit: number,
  settle: (x: Int32Array) => Int32Array,
) {
  let starts = start;
  let conflicts = 0;
  if (w.n * w.horizon > widest || w.base.some((x) => x !== 0)) return { starts, conflicts };
  const random = seeded(7);
  const endOf = () => starts[w.n - 1] ?? 0;
  const vainMost = Math.max(vainLeast, w.n / 2);
  let share = 0.3;
  for (let vain = 0; vain < vainMost && endOf() > enough && conflicts < limit; vain++) {
    const within = withOrder(w, starts, freeAbout(w, starts, share, random));
    const search = newSearch(within, starts);
    const found = planWithin(search, endOf() - 1, Math.min(tryMost, limit - conflicts));
    conflicts += 1 + search.conflicts;
    // Soon refuted: more may be free; not settled: less.
    share = found.found === 'open' ? Math.max(0.1, share * 0.9) : Math.min(0.9, share * 1.05);
    if (found.found === 'plan') {
      starts = settle(found.starts);
      vain = -1;
      continue;
    }
    // Another plan as short as this one: the next part starts from elsewhere.
    const spent = search.conflicts;
    for (let i = 0; i < w.n; i++) search.choice.lean[i] = below(random, endOf() + 1);
    const other = planWithin(search, endOf(), Math.min(tryMost, limit - conflicts));
    conflicts += search.conflicts - spent;
    if (other.found === 'plan') {
      const next = settle(other.starts);
      if ((next[w.n - 1] ?? 0) < endOf()) vain = -1;
      starts = next;
    }
  }
  return { starts, conflicts };
}

/** The pieces that run within a share of the whole time, about a time by chance. */
function freeAbout(w: WorkLayout, starts: Int32Array, share: number, random: Seeded): Uint8Array {
  const end = starts[w.n - 1] ?? 0;
  const wide = Math.max(1, Math.round(share * end));
  const from = below(random, end + wide) - wide;
  return Uint8Array.from(starts, (s, i) => (s < from + wide && (w.table[i]?.end[s] ?? 0) > from ? 1 : 0));
}

type Arc = { readonly piece: number; readonly lag: number };

/** The work with the order of a plan kept among the pieces that are not free: each follows those whose units it takes over. */
function withOrder(w: WorkLayout, starts: Int32Array, free: Uint8Array): WorkLayout {
  const before: Arc[][] = Array.from({ length: w.n }, (_, i) =>
    Array.from(w.before.subarray(w.beforeFrom[i], w.beforeFrom[i + 1]), (piece, k) => ({
      piece,
      lag: w.beforeLag[(w.beforeFrom[i] ?? 0) + k] ?? 0,
    })),
  );
  const rank = new Int32Array(w.n);
  w.order.forEach((i, a) => {
    rank[i] = a;
  });
  const order = w.order.toSorted((a, b) => (starts[a] ?? 0) - (starts[b] ?? 0) || (rank[a] ?? 0) - (rank[b] ?? 0));
  for (let r = 0; r < w.m; r++) handOn(w, r, order, starts, free, before);
  const after: Arc[][] = before.map(() => []);
  before.forEach((list, j) => {
    for (const { piece, lag } of list) after[piece]?.push({ piece: j, lag });
  });
  const [b, a] = [packed(before), packed(after)];
  return {
    ...w,
    order,
    beforeFrom: b.from,
    before: b.piece,
    beforeLag: b.lag,
    afterFrom: a.from,
    after: a.piece,
    afterLag: a.lag,
  };
}

/** Units of one resource go from piece to piece in the order of starts; each taker follows the giver. */
function handOn(
  w: WorkLayout,
  r: number,
  order: Int32Array,
  starts: Int32Array,
  free: Uint8Array,
  before: Arc[][],
): void {
  let held: { by: number; end: number; units: number }[] = [{ by: -1, end: 0, units: w.capacity[r] ?? 0 }];
  for (const j of order) {
    if (free[j] === 1) continue;
    for (let k = w.needFrom[j] ?? 0; k < (w.needFrom[j + 1] ?? 0); k++) {
      if (w.needOf[k] !== r) continue;
      const units = w.needUnits[k] ?? 0;
      let missing = units;
      const s = starts[j] ?? 0;
      // Those that ended last first: what was idle for long stays for others.
      for (const h of held.toSorted((x, y) => y.end - x.end || x.by - y.by)) {
        const take = h.end <= s ? Math.min(missing, h.units) : 0;
        if (take === 0) continue;
        h.units -= take;
        missing -= take;
        if (h.by >= 0) before[j]?.push({ piece: h.by, lag: 0 });
      }
      held = held.filter((h) => h.units > 0);
      held.push({ by: j, end: w.table[j]?.end[s] ?? 0, units });
    }
  }
}

function packed(lists: readonly (readonly Arc[])[]) {
  const from = new Int32Array(lists.length + 1);
  lists.forEach((l, i) => {
    from[i + 1] = (from[i] ?? 0) + l.length;
  });
  const all = lists.flat();
  return { from, piece: Int32Array.from(all, (x) => x.piece), lag: Int32Array.from(all, (x) => x.lag) };
}
