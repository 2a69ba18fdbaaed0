import { bump } from './choice.kernel.ts';
import type { Search } from './state.ts';

/** Puts an atom in play: with what the view is needed for already, the stronger holds. */
function need(s: Search, view: number, k: number): void {
  const { analysis: a, trail: t } = s;
  let e = s.lastOf[view]!;
  while (e >= 0 && t.old[e]! >= k) e = t.earlier[e]!;
  // True from the start, or at the root: nothing to explain.
  if (e < 0 || t.level[e] === 0) return;
  if (a.entry[view]! >= 0) {
    if (k > a.need[view]!) {
      a.need[view] = k;
      a.entry[view] = e;
    }
    return;
  }
  a.need[view] = k;
  a.entry[view] = e;
  a.views[a.count++] = view;
  bump(s, view, k);
}

function drop(s: Search, place: number): void {
  const a = s.analysis;
  a.entry[a.views[place]!] = -1;
  a.views[place] = a.views[--a.count]!;
}

function needReason(s: Search, entry: number): void {
  const reason = s.trail.reason[entry]!;
  if (reason >= 0) {
    const count = s.pool[reason]!;
    for (let a = 0; a < count; a++) need(s, s.pool[reason + 1 + 2 * a]!, s.pool[reason + 2 + 2 * a]!);
    return;
  }
  const clause = -2 - reason;
  const { arena } = s.clauses;
  const own = s.trail.view[entry]!;
  for (let a = 0; a < arena[clause]!; a++) {
    const v = arena[clause + 2 + 2 * a]!;
    if (v !== own) need(s, v ^ 1, 1 - arena[clause + 3 + 2 * a]!);
  }
}

/**
 * From a contradiction to what has to be different: the clause of the first single reason at the latest level, into
 * `learned` with that atom first and the next latest second. Gives the level to go back to; -1: nothing can be different.
 */
export function analyse(s: Search): number {
  const { analysis: a, trail: t } = s;
  a.count = 0;
  for (let c = 0; c < s.clashCount; c++) need(s, s.clash[2 * c]!, s.clash[2 * c + 1]!);
  let single = false;
  while (!single && a.count > 0) {
    let latest = 0;
    let second = -1;
    for (let p = 1; p < a.count; p++) {
      const e = a.entry[a.views[p]!]!;
      if (e > a.entry[a.views[latest]!]!) {
        second = a.entry[a.views[latest]!]!;
        latest = p;
      } else if (e > second) second = e;
    }
    const entry = a.entry[a.views[latest]!]!;
    single = second < 0 || t.level[second]! < t.level[entry]!;
    if (!single) {
      drop(s, latest);
      needReason(s, entry);
    }
  }
  if (a.count === 0) return -1;
  thin(s);
  return write(s);
}

/** Leaves out atoms that the others imply by one reason. */
function thin(s: Search): void {
  const { analysis: a, trail: t } = s;
  let latest = -1;
  for (let p = 0; p < a.count; p++) if (a.entry[a.views[p]!]! > latest) latest = a.entry[a.views[p]!]!;
  for (let p = a.count - 1; p >= 0; p--) {
    const entry = a.entry[a.views[p]!]!;
    if (entry !== latest && t.reason[entry] !== -1 && implied(s, entry)) drop(s, p);
  }
}

function implied(s: Search, entry: number): boolean {
  const reason = s.trail.reason[entry]!;
  const inPool = reason >= 0;
  const clause = -2 - reason;
  const x = inPool ? s.pool : s.clauses.arena;
  const from = inPool ? reason + 1 : clause + 2;
  const count = inPool ? x[reason]! : x[clause]!;
  const own = s.trail.view[entry]!;
  let all = true;
  for (let a = 0; a < count && all; a++) {
    const v = x[from + 2 * a]!;
    const k = x[from + 2 * a + 1]!;
    if (inPool) all = known(s, v, k, entry);
    else if (v !== own) all = known(s, v ^ 1, 1 - k, entry);
  }
  return all;
}

/** Is an atom true at the root, or in play as strong or stronger, from before `entry`? */
function known(s: Search, view: number, k: number, entry: number): boolean {
  const { analysis: a, trail: t } = s;
  if (a.entry[view]! >= 0 && a.need[view]! >= k && a.entry[view]! < entry) return true;
  let e = s.lastOf[view]!;
  while (e >= 0 && t.old[e]! >= k) e = t.earlier[e]!;
  return e < 0 || t.level[e] === 0;
}

function write(s: Search): number {
  const { analysis: a, trail: t } = s;
  let first = 0;
  for (let p = 1; p < a.count; p++) if (a.entry[a.views[p]!]! > a.entry[a.views[first]!]!) first = p;
  let second = -1;
  for (let p = 0; p < a.count; p++)
    if (p !== first && (second < 0 || a.entry[a.views[p]!]! > a.entry[a.views[second]!]!)) second = p;
  const back = second < 0 ? 0 : t.level[a.entry[a.views[second]!]!]!;
  a.learnedCount = 0;
  put(s, first);
  if (second >= 0) put(s, second);
  for (let p = 0; p < a.count; p++) if (p !== first && p !== second) put(s, p);
  for (let p = 0; p < a.count; p++) a.entry[a.views[p]!] = -1;
  return back;
}

function put(s: Search, place: number): void {
  const a = s.analysis;
  const v = a.views[place]!;
  a.learned[2 * a.learnedCount] = v ^ 1;
  a.learned[2 * a.learnedCount + 1] = 1 - a.need[v]!;
  a.learnedCount++;
}

/** How many levels the atoms in play come from: the fewer, the more the clause is worth. */
export function levelsOfLearned(s: Search): number {
  const { analysis: a, trail: t } = s;
  a.stamp++;
  let count = 0;
  for (let c = 0; c < a.learnedCount; c++) {
    const v = a.learned[2 * c]! ^ 1;
    const k = 1 - a.learned[2 * c + 1]!;
    let e = s.lastOf[v]!;
    while (e >= 0 && t.old[e]! >= k) e = t.earlier[e]!;
    const level = e < 0 ? 0 : t.level[e]!;
    if (a.levelSeen[level] === a.stamp) continue;
    a.levelSeen[level] = a.stamp;
    count++;
  }
  return count;
}
