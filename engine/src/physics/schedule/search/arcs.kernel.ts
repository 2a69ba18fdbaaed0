import type { Search } from './state.ts';
import { addWhy, endsBy, set } from './trail.kernel.ts';

/** What a moved start means for what comes before and after it, and for its pairs. False: a contradiction. */
export function drawStart(s: Search, view: number): boolean {
  const i = view >> 1;
  const fine = (view & 1) === 0 ? drawAfter(s, i) : drawBefore(s, i);
  if (!fine) return false;
  const { from, of } = s.pairs;
  for (let a = from[i]!; a < from[i + 1]!; a++) if (!drawPair(s, of[a]!)) return false;
  return true;
}

function drawAfter(s: Search, i: number): boolean {
  const { w } = s;
  const start = s.bound[2 * i]!;
  const end = w.table[i]!.end[start]!;
  for (let a = w.afterFrom[i]!; a < w.afterFrom[i + 1]!; a++) {
    const j = w.after[a]!;
    const t = end + w.afterLag[a]!;
    if (s.bound[2 * j]! >= t) continue;
    s.whyCount = 0;
    addWhy(s, 2 * i, start);
    if (!set(s, 2 * j, t, -1)) return false;
  }
  return true;
}

function drawBefore(s: Search, i: number): boolean {
  const { w } = s;
  const start = -s.bound[2 * i + 1]!;
  for (let a = w.beforeFrom[i]!; a < w.beforeFrom[i + 1]!; a++) {
    const p = w.before[a]!;
    s.whyCount = 0;
    addWhy(s, 2 * i + 1, -start);
    if (!set(s, 2 * p + 1, endsBy(s, p, start - w.beforeLag[a]!), -1)) return false;
  }
  return true;
}

/** The two pieces of a pair follow each other one way or the other. */
export function drawPair(s: Search, q: number): boolean {
  const a = s.pairs.first[q]!;
  const b = s.pairs.second[q]!;
  const x = s.w.n + q;
  if (s.bound[2 * x] === 1) return drawOrder(s, a, b, 2 * x, 1);
  if (s.bound[2 * x + 1] === 0) return drawOrder(s, b, a, 2 * x + 1, 0);
  if (tooLate(s, a, b)) return set(s, 2 * x + 1, 0, -1) && drawOrder(s, b, a, 2 * x + 1, 0);
  if (tooLate(s, b, a)) return set(s, 2 * x, 1, -1) && drawOrder(s, a, b, 2 * x, 1);
  return true;
}

/** Can a no longer end before b has to start? Then `why` says so. */
function tooLate(s: Search, a: number, b: number): boolean {
  const last = -s.bound[2 * b + 1]!;
  const { end, covers } = s.w.table[a]!;
  if (end[s.bound[2 * a]!]! <= last) return false;
  s.whyCount = 0;
  addWhy(s, 2 * a, covers[last]!);
  addWhy(s, 2 * b + 1, -last);
  return true;
}

function drawOrder(s: Search, a: number, b: number, view: number, k: number): boolean {
  const first = s.bound[2 * a]!;
  const end = s.w.table[a]!.end[first]!;
  if (s.bound[2 * b]! < end) {
    s.whyCount = 0;
    addWhy(s, view, k);
    addWhy(s, 2 * a, first);
    if (!set(s, 2 * b, end, -1)) return false;
  }
  const last = -s.bound[2 * b + 1]!;
  s.whyCount = 0;
  addWhy(s, view, k);
  addWhy(s, 2 * b + 1, -last);
  return set(s, 2 * a + 1, endsBy(s, a, last), -1);
}
