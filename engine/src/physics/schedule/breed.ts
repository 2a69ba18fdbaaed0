import { justify, listByTime, ranksOf } from './justify.kernel.ts';
import type { WorkLayout } from './layout.ts';
import { generate, generateParallel, lateness, newRoom } from './place.kernel.ts';
import { keysOf, listByKeys, ruleNames } from './rules.ts';
import { below, type Seeded, seeded } from './seeded.ts';

/** A plan: starts [n] in ticks, the end of all work, and ticks by which deadlines are missed together. */
export type Plan = { readonly starts: Int32Array; readonly end: number; readonly late: number };

type Member = { readonly list: Int32Array; readonly starts: Int32Array; worth: number };

/** Missed deadlines count before the end of all work. */
const worthOf = (w: WorkLayout, starts: Int32Array): number =>
  lateness(w, starts) * (w.horizon + 2) + (starts[w.n - 1] ?? 0);

const members = 24;

/**
 * A good plan by serial and parallel generation over all rules, forward-backward improvement, and then lists bred from
 * good lists (Hartmann 1998; Valls and others 2005; from memory). At most `plans` plans are made; stops at `bound`. The
 * same input gives the same plan everywhere.
 */
export function breedPlan(w: WorkLayout, bound: number, plans: number, seed = 1): Plan & { readonly made: number } {
  const random = seeded(seed);
  const rank = new Int32Array(w.n);
  ranksOf(w, rank);
  const room = newRoom(w);
  const trial = new Int32Array(w.n);
  let made = 0;
  const finish = (list: Int32Array, starts: Int32Array): Member => {
    if ((starts[w.n - 1] ?? 0) <= w.horizon) justify(w, starts, rank, room, list, trial);
    made += 3;
    return { list, starts, worth: worthOf(w, starts) };
  };
  const fromList = (list: Int32Array): Member => {
    const starts = new Int32Array(w.n);
    generate(w, list, room, starts);
    return finish(list, starts);
  };
  let pool: Member[] = [];
  for (const rule of ruleNames) {
    const keys = keysOf(w, rule);
    pool.push(fromList(listByKeys(w, keys)));
    const starts = new Int32Array(w.n);
    generateParallel(w, keys, room, starts);
    const list = new Int32Array(w.n);
    listByTime(w, starts, false, rank, room.keys, list);
    pool.push(finish(list, starts));
    if (Math.min(...pool.map((m) => m.worth)) <= bound) break;
  }
  const keys = keysOf(w, 'latest start');
  const worthy = () => Math.min(...pool.map((m) => m.worth)) > bound && made < plans;
  while (pool.length < members && worthy()) pool.push(fromList(listByKeys(w, shaken(keys, random))));
  while (worthy()) {
    pool.sort((a, b) => a.worth - b.worth);
    pool = pool.slice(0, members);
    const mother = pool[Math.min(below(random, members), below(random, members))];
    const father = pool[below(random, members)];
    if (!mother || !father) break;
    const child = fromList(bred(w, mother.list, father.list, random));
    if (!pool.some((m) => m.worth === child.worth && same(m.list, child.list))) pool.push(child);
  }
  const best = pool.reduce((a, b) => (b.worth < a.worth ? b : a));
  return { starts: best.starts, end: best.starts[w.n - 1] ?? 0, late: lateness(w, best.starts), made };
}

const same = (a: Int32Array, b: Int32Array): boolean => a.every((x, i) => x === b[i]);

/** Keys with chance mixed in. */
function shaken(keys: Float64Array, random: Seeded): Float64Array {
  const spread = Math.max(...keys) - Math.min(...keys) + 1;
  return keys.map((k) => k + (spread * below(random, 1000)) / 4000);
}

/** A stretch of the father's order within the mother's; then a few pieces moved within what comes before and after. */
function bred(w: WorkLayout, mother: Int32Array, father: Int32Array, random: Seeded): Int32Array {
  const n = w.n;
  const [a, b] = [below(random, n), below(random, n)];
  const [from, to] = [Math.min(a, b), Math.max(a, b)];
  const taken = new Uint8Array(n);
  const child = new Int32Array(n);
  let at = 0;
  const take = (i: number, until: number): void => {
    if (taken[i] === 1 || at >= until) return;
    taken[i] = 1;
    child[at++] = i;
  };
  for (const i of mother) take(i, from);
  for (const i of father) take(i, to);
  for (const i of mother) take(i, n);
  for (let k = 0; k < 1 + n / 25; k++) shift(w, child, below(random, n), random);
  return child;
}

function shift(w: WorkLayout, list: Int32Array, at: number, random: Seeded): void {
  const i = list[at] ?? 0;
  let low = 0;
  let high = w.n - 1;
  for (let p = 0; p < w.n; p++) {
    const j = list[p] ?? 0;
    if (p < at && comesBefore(w, j, i)) low = p + 1;
    if (p > at && high === w.n - 1 && comesBefore(w, i, j)) high = p - 1;
  }
  const to = low + below(random, Math.max(1, high - low + 1));
  if (to < at) list.copyWithin(to + 1, to, at);
  else list.copyWithin(at, at + 1, to + 1);
  list[to] = i;
}

function comesBefore(w: WorkLayout, i: number, j: number): boolean {
  for (let k = w.beforeFrom[j] ?? 0; k < (w.beforeFrom[j + 1] ?? 0); k++) if (w.before[k] === i) return true;
  return false;
}
