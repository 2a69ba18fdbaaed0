import type { WorkLayout } from '../layout.ts';
import { headsAndTails } from '../times.kernel.ts';

/**
 * Everything the search knows. A variable has two views: 2x is x itself, 2x + 1 is -x; a bound of a view is a least value, so that
 * lower and upper bounds are handled alike. An atom (view, k) says: the view is at least k. Its opposite is
 * (view ^ 1, 1 - k). Variables 0 to n - 1 are starts; behind them one for each pair of pieces that cannot run at once: 1
 * when the first comes first.
 */
export type Search = {
  readonly w: WorkLayout;
  /** Variables. */
  readonly size: number;
  readonly bound: Int32Array;
  readonly pairs: Pairs;
  /** What was set, in order: view, value, value before, the entry of that view before, and why. */
  trail: Trail;
  /** Latest entry of each view, -1 where none. */
  readonly lastOf: Int32Array;
  /** First entry of each level. */
  levelStart: Int32Array;
  level: number;
  /** Entries whose consequences are drawn. */
  drawn: number;
  /** Reasons: count, then atoms. */
  pool: Int32Array;
  poolTop: number;
  /** Atoms of the reason being written. */
  why: Int32Array;
  whyCount: number;
  /** Atoms that contradict each other. */
  clash: Int32Array;
  clashCount: number;
  readonly clauses: Clauses;
  readonly profile: Profile;
  readonly analysis: Analysis;
  readonly choice: Choice;
  conflicts: number;
};

export type Pairs = {
  readonly count: number;
  readonly first: Int32Array;
  readonly second: Int32Array;
  /** Pairs of piece i: of[from[i]] to of[from[i + 1]]. */
  readonly from: Int32Array;
  readonly of: Int32Array;
};

export type Trail = {
  length: number;
  view: Int32Array;
  value: Int32Array;
  old: Int32Array;
  earlier: Int32Array;
  /** -1 chosen; from 0 a place in the pool; below -1 a clause, -2 - its place. */
  reason: Int32Array;
  level: Int32Array;
  pool: Int32Array;
};

export type Clauses = {
  /** Size, levels, then atoms of which one has to hold. */
  arena: Int32Array;
  top: number;
  count: number;
  /** Watches of the view whose growth may make an atom false: least value that does, clause. */
  readonly watch: Int32Array[];
  readonly watched: Int32Array;
};

/** Units surely in use, from the pieces' sure parts `[from, to)`. */
export type Profile = {
  readonly use: Int32Array;
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** Pieces whose bounds moved since the last look. */
  readonly moved: Uint8Array;
  readonly list: Int32Array;
  count: number;
  /** Ticks of each resource whose use changed. */
  readonly low: Int32Array;
  readonly high: Int32Array;
  readonly again: Uint8Array;
  /** Pieces that need a resource, the greediest first: users[usersFrom[r]] and on. */
  readonly usersFrom: Int32Array;
  readonly users: Int32Array;
  readonly userUnits: Int32Array;
};

export type Analysis = {
  /** Needed value of each view, and the entry that made it true; entry -1: not needed. */
  readonly need: Int32Array;
  readonly entry: Int32Array;
  /** Views in play. */
  readonly views: Int32Array;
  count: number;
  learned: Int32Array;
  learnedCount: number;
  readonly levelSeen: Int32Array;
  stamp: number;
};

/** Atoms "variable <= value" met in conflicts, the most met on top of a heap. */
export type Choice = {
  readonly idOf: Int32Array;
  variable: Int32Array;
  value: Int32Array;
  weight: Float64Array;
  heap: Int32Array;
  place: Int32Array;
  ids: number;
  heapSize: number;
  popped: Int32Array;
  poppedLevel: Int32Array;
  poppedCount: number;
  step: number;
  /** Starts of the best plan: where a choice leans to. */
  readonly lean: Int32Array;
};

/** More pairs than this are left to the profile alone. */
const mostPairs = 4000;

/** A fresh search over the work, its starts within longest paths and `by`. */
export function newSearch(w: WorkLayout, lean: Int32Array): Search {
  const pairs = pairsOf(w);
  const size = w.n + pairs.count;
  const views = 2 * size;
  const { head, lastStart } = headsAndTails(w, w.horizon);
  const bound = new Int32Array(views);
  for (let i = 0; i < w.n; i++) {
    bound[2 * i] = head[i] ?? 0;
    bound[2 * i + 1] = -(lastStart[i] ?? 0);
  }
  for (let q = w.n; q < size; q++) bound[2 * q + 1] = -1;
  const ints = (k: number) => new Int32Array(k);
  const width = 4 * views + 64;
  const trail: Trail = {
    length: 0,
    view: ints(width),
    value: ints(width),
    old: ints(width),
    earlier: ints(width),
    reason: ints(width),
    level: ints(width),
    pool: ints(width),
  };
  return {
    w,
    size,
    bound,
    pairs,
    trail,
    lastOf: ints(views).fill(-1),
    levelStart: ints(views + 64),
    level: 0,
    drawn: 0,
    pool: ints(1 << 14),
    poolTop: 0,
    why: ints(4 * views + 16),
    whyCount: 0,
    clash: ints(4 * views + 16),
    clashCount: 0,
    clauses: {
      arena: ints(1 << 16),
      top: 0,
      count: 0,
      watch: Array.from({ length: views }, () => ints(16)),
      watched: ints(views),
    },
    profile: newProfile(w),
    analysis: {
      need: ints(views),
      entry: ints(views).fill(-1),
      views: ints(views),
      count: 0,
      learned: ints(2 * views + 2),
      learnedCount: 0,
      levelSeen: ints(views + 64),
      stamp: 0,
    },
    choice: newChoice(w, pairs.count, lean),
    conflicts: 0,
  };
}

function newProfile(w: WorkLayout): Profile {
  const ints = (k: number) => new Int32Array(k);
  const users: { r: number; i: number; units: number }[] = [];
  for (let i = 0; i < w.n; i++)
    for (let k = w.needFrom[i] ?? 0; k < (w.needFrom[i + 1] ?? 0); k++)
      users.push({ r: w.needOf[k] ?? 0, i, units: w.needUnits[k] ?? 0 });
  users.sort((a, b) => a.r - b.r || b.units - a.units || a.i - b.i);
  const usersFrom = ints(w.m + 1);
  for (const u of users) usersFrom[u.r + 1] = (usersFrom[u.r + 1] ?? 0) + 1;
  for (let r = 0; r < w.m; r++) usersFrom[r + 1] = (usersFrom[r + 1] ?? 0) + (usersFrom[r] ?? 0);
  return {
    use: Int32Array.from(w.base),
    from: ints(w.n),
    to: ints(w.n),
    moved: new Uint8Array(w.n).fill(1),
    list: Int32Array.from({ length: w.n }, (_, i) => i),
    count: w.n,
    low: ints(w.m).fill(w.horizon + 1),
    high: ints(w.m).fill(-1),
    again: new Uint8Array(w.n).fill(1),
    usersFrom,
    users: Int32Array.from(users, (u) => u.i),
    userUnits: Int32Array.from(users, (u) => u.units),
  };
}

function newChoice(w: WorkLayout, pairs: number, lean: Int32Array): Choice {
  const ints = (k: number) => new Int32Array(k);
  return {
    idOf: ints(w.n * (w.horizon + 2) + pairs).fill(-1),
    variable: ints(1024),
    value: ints(1024),
    weight: new Float64Array(1024),
    heap: ints(1024),
    place: ints(1024),
    ids: 0,
    heapSize: 0,
    popped: ints(1024),
    poppedLevel: ints(1024),
    poppedCount: 0,
    step: 1,
    lean: Int32Array.from(lean),
  };
}

/** Pieces that no resource lets run at once, and that do not follow each other anyway. */
function pairsOf(w: WorkLayout): Pairs {
  const follows = closure(w);
  const first: number[] = [];
  const second: number[] = [];
  for (let i = 0; i < w.n; i++)
    for (let j = i + 1; j < w.n; j++)
      if (!follows[i * w.n + j] && !follows[j * w.n + i] && excludes(w, i, j)) {
        first.push(i);
        second.push(j);
      }
  if (first.length > mostPairs) first.length = second.length = 0;
  const lists: number[][] = Array.from({ length: w.n }, () => []);
  first.forEach((i, q) => {
    lists[i]?.push(q);
    lists[second[q] ?? 0]?.push(q);
  });
  const from = new Int32Array(w.n + 1);
  lists.forEach((l, i) => {
    from[i + 1] = (from[i] ?? 0) + l.length;
  });
  return {
    count: first.length,
    first: Int32Array.from(first),
    second: Int32Array.from(second),
    from,
    of: Int32Array.from(lists.flat()),
  };
}

function excludes(w: WorkLayout, i: number, j: number): boolean {
  for (let a = w.needFrom[i] ?? 0; a < (w.needFrom[i + 1] ?? 0); a++)
    for (let b = w.needFrom[j] ?? 0; b < (w.needFrom[j + 1] ?? 0); b++)
      if (
        w.needOf[a] === w.needOf[b] &&
        (w.needUnits[a] ?? 0) + (w.needUnits[b] ?? 0) > (w.capacity[w.needOf[a] ?? 0] ?? 0)
      )
        return true;
  return false;
}

/** [n][n]: does j come after i, near or far? */
function closure(w: WorkLayout): Uint8Array {
  const far = new Uint8Array(w.n * w.n);
  for (let a = w.n - 1; a >= 0; a--) {
    const i = w.order[a] ?? 0;
    for (let k = w.afterFrom[i] ?? 0; k < (w.afterFrom[i + 1] ?? 0); k++) {
      const j = w.after[k] ?? 0;
      far[i * w.n + j] = 1;
      for (let x = 0; x < w.n; x++) if (far[j * w.n + x]) far[i * w.n + x] = 1;
    }
  }
  return far;
}
