import { lastStartBy } from '../times.kernel.ts';
import { reinsert } from './choice.kernel.ts';
import { wider } from './grow.ts';
import type { Search } from './state.ts';

/** Room for more entries, levels and reasons. */
function makeRoom(s: Search): void {
  const t = s.trail;
  if (t.length + 2 > t.view.length) {
    t.view = wider(t.view);
    t.value = wider(t.value);
    t.old = wider(t.old);
    t.earlier = wider(t.earlier);
    t.reason = wider(t.reason);
    t.level = wider(t.level);
    t.pool = wider(t.pool);
  }
  if (s.level + 2 > s.levelStart.length) s.levelStart = wider(s.levelStart);
  if (s.poolTop + 2 * s.whyCount + 8 > s.pool.length) s.pool = wider(s.pool);
}

/** The least value from k on that the view may take: starts only where a piece may start. */
export function rounded(s: Search, view: number, k: number): number {
  const i = view >> 1;
  if (i >= s.w.n) return k;
  const { next, prev } = s.w.table[i]!;
  const never = s.w.horizon + 1;
  if ((view & 1) === 0) return k <= 0 ? next[0]! : k >= never ? never : next[k]!;
  return k > 0 ? 1 : -prev[Math.min(-k, never)]!;
}

export function addWhy(s: Search, view: number, k: number): void {
  s.why[2 * s.whyCount] = view;
  s.why[2 * s.whyCount + 1] = k;
  s.whyCount++;
}

/** Makes the reason being written, and one more atom if any, the contradiction. */
export function clashFromWhy(s: Search): void {
  s.clash.set(s.why.subarray(0, 2 * s.whyCount));
  s.clashCount = s.whyCount;
}

/**
 * Sets the view to at least k because of the atoms in `why`, or of a clause where `clause` is from 0 on. False: that
 * contradicts, and `clash` says what.
 */
export function set(s: Search, view: number, wanted: number, clause: number): boolean {
  const k = rounded(s, view, wanted);
  if (s.bound[view]! >= k) return true;
  if (s.bound[view ^ 1]! >= 1 - k) {
    if (clause >= 0) whyOfClause(s, clause, view);
    addWhy(s, view ^ 1, 1 - k);
    clashFromWhy(s);
    return false;
  }
  makeRoom(s);
  enter(s, view, k, clause >= 0 ? -2 - clause : storeWhy(s));
  return true;
}

/** Chooses an atom: a new level. */
export function choose(s: Search, view: number, k: number): void {
  makeRoom(s);
  s.level++;
  s.levelStart[s.level] = s.trail.length;
  enter(s, view, rounded(s, view, k), -1);
}

function enter(s: Search, view: number, k: number, reason: number): void {
  const t = s.trail;
  const e = t.length++;
  t.view[e] = view;
  t.value[e] = k;
  t.old[e] = s.bound[view]!;
  t.earlier[e] = s.lastOf[view]!;
  t.reason[e] = reason;
  t.level[e] = s.level;
  t.pool[e] = reason >= 0 ? reason : s.poolTop;
  s.lastOf[view] = e;
  s.bound[view] = k;
  touch(s, view >> 1);
}

function storeWhy(s: Search): number {
  const at = s.poolTop;
  s.pool[at] = s.whyCount;
  s.pool.set(s.why.subarray(0, 2 * s.whyCount), at + 1);
  s.poolTop = at + 1 + 2 * s.whyCount;
  return at;
}

export function touch(s: Search, x: number): void {
  const p = s.profile;
  if (x >= s.w.n || p.moved[x] === 1) return;
  p.moved[x] = 1;
  p.list[p.count++] = x;
}

/** The atoms that made all of a clause but the atom on `view` false. */
export function whyOfClause(s: Search, clause: number, view: number): void {
  const { arena } = s.clauses;
  s.whyCount = 0;
  for (let a = 0; a < arena[clause]!; a++) {
    const v = arena[clause + 2 + 2 * a]!;
    if (v !== view) addWhy(s, v ^ 1, 1 - arena[clause + 3 + 2 * a]!);
  }
}

/** Takes back everything above a level. */
export function backTo(s: Search, level: number): void {
  if (s.level <= level) return;
  const t = s.trail;
  const to = s.levelStart[level + 1]!;
  for (let e = t.length - 1; e >= to; e--) {
    const v = t.view[e]!;
    s.bound[v] = t.old[e]!;
    s.lastOf[v] = t.earlier[e]!;
    touch(s, v >> 1);
  }
  s.poolTop = t.pool[to]!;
  t.length = to;
  s.drawn = to;
  s.level = level;
  reinsert(s, level);
}

/** The upper view's value of "piece i ends by t". */
export const endsBy = (s: Search, i: number, t: number): number => -lastStartBy(s.w, i, t);
