import type { Search } from './state.ts';
import { addWhy, clashFromWhy, set } from './trail.kernel.ts';

/** Brings the sure parts of moved pieces into the use of units. */
function syncParts(s: Search): void {
  const p = s.profile;
  for (let a = 0; a < p.count; a++) {
    const i = p.list[a]!;
    p.moved[i] = 0;
    p.again[i] = 1;
    const last = -s.bound[2 * i + 1]!;
    const end = s.w.table[i]!.end[s.bound[2 * i]!]!;
    const from = last < end ? last : 0;
    const to = last < end ? end : 0;
    if (from === p.from[i] && to === p.to[i]) continue;
    // What both have is left alone where they meet.
    if (from < p.to[i]! && p.from[i]! < to) {
      change(s, i, Math.min(from, p.from[i]!), Math.max(from, p.from[i]!), from < p.from[i]! ? 1 : -1);
      change(s, i, Math.min(to, p.to[i]!), Math.max(to, p.to[i]!), to > p.to[i]! ? 1 : -1);
    } else {
      change(s, i, p.from[i]!, p.to[i]!, -1);
      change(s, i, from, to, 1);
    }
    p.from[i] = from;
    p.to[i] = to;
  }
  p.count = 0;
}

function change(s: Search, i: number, from: number, to: number, sign: number): void {
  if (from >= to) return;
  const { w, profile: p } = s;
  const width = w.horizon + 1;
  for (let k = w.needFrom[i]!; k < w.needFrom[i + 1]!; k++) {
    const r = w.needOf[k]!;
    const units = sign * w.needUnits[k]!;
    for (let t = from; t < to; t++) p.use[r * width + t]! += units;
    if (sign < 0) continue;
    if (from < p.low[r]!) p.low[r] = from;
    if (to - 1 > p.high[r]!) p.high[r] = to - 1;
  }
}

/** Moves starts off ticks where others surely hold the units. False: a contradiction. */
export function drawProfile(s: Search): boolean {
  syncParts(s);
  const { w, profile: p } = s;
  markTouched(s);
  p.low.fill(w.horizon + 1);
  p.high.fill(-1);
  for (let i = 0; i < w.n; i++) {
    if (p.again[i] === 0) continue;
    if (!drawLower(s, i) || !drawUpper(s, i)) return false;
    p.again[i] = 0;
  }
  return true;
}

/** Pieces whose first or last place meets ticks where use changed are looked at again. */
function markTouched(s: Search): void {
  const { w, profile: p } = s;
  for (let i = 0; i < w.n; i++) {
    if (p.again[i] === 1) continue;
    const first = s.bound[2 * i]!;
    const last = -s.bound[2 * i + 1]!;
    const { end } = w.table[i]!;
    for (let k = w.needFrom[i]!; k < w.needFrom[i + 1]!; k++) {
      const r = w.needOf[k]!;
      if ((p.high[r]! >= first && p.low[r]! < end[first]!) || (p.high[r]! >= last && p.low[r]! < end[last]!))
        p.again[i] = 1;
    }
  }
}

/** The last tick in [from, to) at which need k of piece i does not fit beside the sure parts of others; -1: it fits. */
function clashOfNeed(s: Search, i: number, k: number, from: number, to: number): number {
  const { w, profile: p } = s;
  const r = w.needOf[k]!;
  const row = r * (w.horizon + 1);
  const cap = w.capacity[r]!;
  const most = cap - w.needUnits[k]!;
  const own = p.from[i]!;
  const ownTo = p.to[i]!;
  for (let t = to - 1; t >= from; t--) if (p.use[row + t]! > (t >= own && t < ownTo ? cap : most)) return t;
  return -1;
}

function drawLower(s: Search, i: number): boolean {
  const { w } = s;
  const { end, covers } = w.table[i]!;
  for (let k = w.needFrom[i]!; k < w.needFrom[i + 1]!; k++) {
    let start = s.bound[2 * i]!;
    let t = clashOfNeed(s, i, k, start, end[start]!);
    while (t >= 0) {
      if (!explain(s, i, k, t)) return false;
      addWhy(s, 2 * i, covers[t]!);
      if (!set(s, 2 * i, t + 1, -1)) return false;
      start = s.bound[2 * i]!;
      t = clashOfNeed(s, i, k, start, end[start]!);
    }
  }
  return true;
}

function drawUpper(s: Search, i: number): boolean {
  const { w } = s;
  const { end, covers } = w.table[i]!;
  for (let k = w.needFrom[i]!; k < w.needFrom[i + 1]!; k++) {
    let start = -s.bound[2 * i + 1]!;
    let t = clashOfNeed(s, i, k, start, end[start]!);
    while (t >= 0) {
      if (!explain(s, i, k, t)) return false;
      addWhy(s, 2 * i + 1, -t);
      if (!set(s, 2 * i + 1, 1 - covers[t]!, -1)) return false;
      start = -s.bound[2 * i + 1]!;
      t = clashOfNeed(s, i, k, start, end[start]!);
    }
  }
  return true;
}

/**
 * Writes into `why` which sure parts leave need k of piece i no room at tick t. Where piece i itself surely runs then,
 * more is in use than there is: the contradiction is made, and false given.
 */
function explain(s: Search, i: number, k: number, t: number): boolean {
  const { w, profile: p } = s;
  const r = w.needOf[k]!;
  const own = t >= p.from[i]! && t < p.to[i]!;
  const over = w.capacity[r]! - w.base[r * (w.horizon + 1) + t]! - (own ? 0 : w.needUnits[k]!);
  s.whyCount = 0;
  let sum = 0;
  // The greediest first: few atoms.
  for (let a = p.usersFrom[r]!; a < p.usersFrom[r + 1]! && sum <= over; a++) {
    const j = p.users[a]!;
    if ((j === i && !own) || t < p.from[j]! || t >= p.to[j]!) continue;
    sum += p.userUnits[a]!;
    addWhy(s, 2 * j, w.table[j]!.covers[t]!);
    addWhy(s, 2 * j + 1, -t);
  }
  if (!own) return true;
  clashFromWhy(s);
  return false;
}
