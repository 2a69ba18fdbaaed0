import { wider } from './grow.ts';
import type { Search } from './state.ts';
import { clashFromWhy, set, whyOfClause } from './trail.kernel.ts';

const isTrue = (s: Search, view: number, k: number): boolean => s.bound[view]! >= k;
const isFalse = (s: Search, view: number, k: number): boolean => s.bound[view ^ 1]! >= 1 - k;

/** Watches an atom: what makes it false is growth of the other view. */
export function watch(s: Search, view: number, k: number, clause: number): void {
  const c = s.clauses;
  const u = view ^ 1;
  if (c.watched[u]! + 2 > c.watch[u]!.length) c.watch[u] = wider(c.watch[u]!);
  const list = c.watch[u]!;
  list[c.watched[u]!] = 1 - k;
  list[c.watched[u]! + 1] = clause;
  c.watched[u]! += 2;
}

/** Stores the learned atoms as a clause; the first two are watched. Gives its place. */
export function storeLearned(s: Search, levels: number): number {
  const c = s.clauses;
  const { learned, learnedCount } = s.analysis;
  if (c.top + 2 * learnedCount + 4 > c.arena.length) c.arena = wider(c.arena);
  const at = c.top;
  c.arena[at] = learnedCount;
  c.arena[at + 1] = levels;
  c.arena.set(learned.subarray(0, 2 * learnedCount), at + 2);
  c.top += 2 + 2 * learnedCount;
  c.count++;
  watch(s, learned[0]!, learned[1]!, at);
  watch(s, learned[2]!, learned[3]!, at);
  return at;
}

/** Draws what clauses say once a view has grown from `old` to `now`. False: a clause is broken. */
export function drawClauses(s: Search, view: number, old: number, now: number): boolean {
  const c = s.clauses;
  const list = c.watch[view]!;
  const count = c.watched[view]!;
  let kept = 0;
  let fine = true;
  for (let a = 0; a < count; a += 2) {
    const least = list[a]!;
    const clause = list[a + 1]!;
    if (fine && least > old && least <= now && moves(s, clause, view ^ 1)) continue;
    list[kept] = least;
    list[kept + 1] = clause;
    kept += 2;
    if (fine && least > old && least <= now) fine = unit(s, clause);
  }
  c.watched[view] = kept;
  return fine;
}

/** Puts the false atom on `view` second, and in its place one that is not false. True: the watch went elsewhere. */
function moves(s: Search, clause: number, view: number): boolean {
  const { arena } = s.clauses;
  const a = clause + 2;
  if (arena[a] === view) swap(arena, a, a + 2);
  if (isTrue(s, arena[a]!, arena[a + 1]!)) return false;
  const end = a + 2 * arena[clause]!;
  for (let p = a + 4; p < end; p += 2)
    if (!isFalse(s, arena[p]!, arena[p + 1]!)) {
      swap(arena, a + 2, p);
      watch(s, arena[a + 2]!, arena[a + 3]!, clause);
      return true;
    }
  return false;
}

/** Every atom but the first is false, or the first is true. */
function unit(s: Search, clause: number): boolean {
  const { arena } = s.clauses;
  const view = arena[clause + 2]!;
  const k = arena[clause + 3]!;
  if (isTrue(s, view, k)) return true;
  if (!isFalse(s, view, k)) return set(s, view, k, clause);
  whyOfClause(s, clause, -1);
  clashFromWhy(s);
  return false;
}

function swap(x: Int32Array, a: number, b: number): void {
  const view = x[a]!;
  const k = x[a + 1]!;
  x[a] = x[b]!;
  x[a + 1] = x[b + 1]!;
  x[b] = view;
  x[b + 1] = k;
}

/** Forgets clauses that span more than `most` levels, and those that always hold. Only at the root. */
export function forget(s: Search, most: number): void {
  const c = s.clauses;
  const { arena } = c;
  const end = c.top;
  c.watched.fill(0);
  c.top = 0;
  c.count = 0;
  for (let at = 0; at < end; ) {
    const size = arena[at]!;
    const width = 2 + 2 * size;
    if ((arena[at + 1]! <= most || size <= 3) && !heldAtRoot(s, at)) {
      arena.copyWithin(c.top, at, at + width);
      openFirst(s, c.top);
      watch(s, arena[c.top + 2]!, arena[c.top + 3]!, c.top);
      watch(s, arena[c.top + 4]!, arena[c.top + 5]!, c.top);
      c.top += width;
      c.count++;
    }
    at += width;
  }
}

/** Atoms that can still hold come first: at the root two of them are left. */
function openFirst(s: Search, clause: number): void {
  const { arena } = s.clauses;
  const a = clause + 2;
  const end = a + 2 * arena[clause]!;
  for (let p = a, to = a; p < end && to <= a + 2; p += 2)
    if (!isFalse(s, arena[p]!, arena[p + 1]!)) {
      if (p !== to) swap(arena, p, to);
      to += 2;
    }
}

function heldAtRoot(s: Search, clause: number): boolean {
  const { arena } = s.clauses;
  let held = false;
  for (let a = 0; a < arena[clause]!; a++)
    if (isTrue(s, arena[clause + 2 + 2 * a]!, arena[clause + 3 + 2 * a]!)) held = true;
  return held;
}
