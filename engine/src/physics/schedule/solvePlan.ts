import { lowerBounds } from './bounds.ts';
import { breedPlan } from './breed.ts';
import { justify, listByTime, ranksOf } from './justify.kernel.ts';
import type { WorkLayout } from './layout.ts';
import { lateness, newRoom } from './place.kernel.ts';
import { searchExactly } from './search/exact.ts';
import { reordered } from './search/reorder.ts';
import { newSearch } from './search/state.ts';
import { planWithin } from './search/within.ts';

/** How much is tried, in counts, so that every machine finds the same. */
export type Effort = {
  /** Plans generated, about. Default 120,000 by pieces, 200 to 800; up to 3000 where a plan has few ticks. */
  readonly plans?: number;
  /** Contradictions met in exact search. Default 100,000 by pieces, 200 to 3000. */
  readonly conflicts?: number;
};

const byPieces = (most: number, w: WorkLayout, low: number, high: number): number =>
  Math.min(high, Math.max(low, Math.floor(most / w.n)));

/** Over few ticks a plan is soon made: more of them in the same time. */
const plansUsual = (w: WorkLayout): number =>
  Math.max(byPieces(120_000, w, 200, 800), Math.min(3000, Math.floor(8_000_000 / (20 * w.n + w.m * (w.horizon + 1)))));

/** Part of the contradictions that goes to shortening the plan part by part, before its proof is sought. */
const reorderShare = 0.25;

/** A plan of a layout: its end lies `gap` ticks or less above the least possible. */
export type SolvedPlan = {
  readonly starts: Int32Array;
  readonly end: number;
  /** No plan that misses deadlines no more than this one ends before. */
  readonly bound: number;
  readonly proved: boolean;
  /** Ticks by which deadlines are missed; `lateProved`: not all of them can be kept. */
  readonly late: number;
  readonly lateProved: boolean;
  readonly made: number;
  readonly conflicts: number;
};

/**
 * The shortest plan found, and how short any could be. Deadlines come first: where not all can be kept, the least sum of
 * minutes late that was found stands, and the bound is that of work without deadlines. `end` above the horizon: pieces
 * with starts at horizon + 1 found no place.
 */
export function solvePlan(w: WorkLayout, effort: Effort = {}): SolvedPlan {
  const plans = effort.plans ?? plansUsual(w);
  const conflicts = effort.conflicts ?? byPieces(100_000, w, 200, 3000);
  const free = { ...w, due: new Int32Array(w.n).fill(w.horizon) };
  // Where nothing is searched, nothing is proved: the dear bounds would be for nothing.
  const bounds = lowerBounds(free, conflicts === 0);
  const bred = breedPlan(w, bounds.best, plans);
  const first = keepsAll(w, bred, conflicts);
  const { starts, late } = first;
  const end = starts[w.n - 1] ?? 0;
  const spent = first.conflicts;
  const rest = { late, lateProved: first.lateProved, made: bred.made };
  if (end > w.horizon) return { ...rest, starts, end, bound: bounds.best, proved: false, conflicts: spent };
  // With deadlines missed, each may be missed by as much as it is: a plan to start from that keeps to all that is asked.
  const asked = late === 0 ? w : { ...w, due: w.due.map((d, i) => Math.max(d, endOf(w, starts, i))) };
  const left = Math.max(0, conflicts - spent);
  const shorter = reordered(asked, starts, bounds.best, Math.floor(left * reorderShare), (x) => tidied(asked, x));
  const exact = searchExactly(asked, shorter.starts, Math.min(bounds.best, end), Math.max(0, left - shorter.conflicts));
  const tidy = tidied(asked, exact.starts);
  const proved = exact.proved && late === 0;
  const bound = late === 0 ? exact.bound : Math.min(bounds.best, exact.bound);
  return {
    ...rest,
    starts: tidy,
    end: tidy[w.n - 1] ?? 0,
    bound,
    proved,
    conflicts: spent + shorter.conflicts + exact.conflicts,
  };
}

const endOf = (w: WorkLayout, starts: Int32Array, i: number): number => w.table[i]?.end[starts[i] ?? 0] ?? 0;

type Kept = {
  readonly starts: Int32Array;
  readonly late: number;
  readonly lateProved: boolean;
  readonly conflicts: number;
};

/** Where the plan misses a deadline or the horizon, exact search is asked whether any plan need not. */
function keepsAll(w: WorkLayout, bred: { starts: Int32Array; late: number; end: number }, limit: number): Kept {
  if (bred.late === 0 && bred.end <= w.horizon) return { ...bred, lateProved: false, conflicts: 0 };
  const search = newSearch(w, bred.starts);
  const found = planWithin(search, w.horizon, Math.floor(limit / 2));
  const conflicts = search.conflicts;
  if (found.found === 'plan') return { starts: found.starts, late: 0, lateProved: false, conflicts };
  return { starts: bred.starts, late: bred.late, lateProved: found.found === 'none', conflicts };
}

/** The same plan pushed late and then early again: nothing waits for nothing. */
function tidied(w: WorkLayout, starts: Int32Array): Int32Array {
  const rank = new Int32Array(w.n);
  ranksOf(w, rank);
  const room = newRoom(w);
  const list = new Int32Array(w.n);
  const out = Int32Array.from(starts);
  listByTime(w, out, false, rank, room.keys, list);
  justify(w, out, rank, room, list, new Int32Array(w.n));
  return lateness(w, out) <= lateness(w, starts) && (out[w.n - 1] ?? 0) <= (starts[w.n - 1] ?? 0)
    ? out
    : Int32Array.from(starts);
}
