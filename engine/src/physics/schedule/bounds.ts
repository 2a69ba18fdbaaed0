import { summedRoom, tails, tooMuchWork } from './bounds.kernel.ts';
import type { WorkLayout } from './layout.ts';
import { newSearch } from './search/state.ts';
import { planWithin } from './search/within.ts';
import { headsAndTails } from './times.kernel.ts';

/** Ends of all work below which no plan can end, in ticks, each by its own argument; `best` is the latest. */
export type LowerBounds = {
  /** What has to come after what, through the calendars. */
  readonly path: number;
  /** All work on one resource against its units, between the first start and the shortest tail. */
  readonly work: number;
  /** Pieces of which at most 1, 2, 3, ... run at once: as on so many machines. */
  readonly machines: number;
  /** The first end for which no window holds too much work. */
  readonly energy: number;
  /** The first end that time-table, order and disjunctive rules together do not refute (Klein and Scholl 1999). */
  readonly refuted: number;
  readonly best: number;
};

/** Windows are looked at in threes of pieces: above this many pieces that is left out. */
const mostForEnergy = 150;

/** Lower bounds on the end of all work. A bound of horizon + 1: it cannot be done within the horizon. `quick`: without the last two. */
export function lowerBounds(w: WorkLayout, quick = false): LowerBounds {
  const { head } = headsAndTails(w, w.horizon);
  const path = head[w.n - 1] ?? 0;
  const tail = tails(w);
  const room = summedRoom(w);
  const sets = Array.from({ length: w.m }, (_, r) => usersOf(w, r));
  const work = Math.max(path, ...sets.map((users, r) => workBound(w, users, r, head, tail, room)));
  const machines = Math.max(path, ...sets.map((users, r) => machineBound(w, users, r, head, tail)));
  const start = Math.max(path, work, machines);
  if (quick) return { path, work, machines, energy: start, refuted: start, best: start };
  const energy = w.n <= mostForEnergy ? energyBound(w, start, room) : start;
  const refuted = refutedBound(w, energy);
  return { path, work, machines, energy, refuted, best: Math.max(start, energy, refuted) };
}

type User = { readonly i: number; readonly units: number };

function usersOf(w: WorkLayout, r: number): User[] {
  const users: User[] = [];
  for (let i = 0; i < w.n; i++)
    for (let k = w.needFrom[i] ?? 0; k < (w.needFrom[i + 1] ?? 0); k++)
      if (w.needOf[k] === r) users.push({ i, units: w.needUnits[k] ?? 0 });
  return users;
}

const at = (x: ArrayLike<number>, i: number): number => x[i] ?? 0;

function workBound(w: WorkLayout, users: User[], r: number, head: Int32Array, tail: Int32Array, room: Float64Array) {
  let bound = 0;
  const width = w.horizon + 2;
  for (const { i: first } of users) {
    const from = at(head, first);
    const later = users.filter((u) => at(head, u.i) >= from);
    const units = later.reduce((a, u) => a + u.units * at(w.length, u.i), 0);
    const rest = Math.min(...later.map((u) => at(tail, u.i) - at(w.length, u.i)));
    let end = Math.min(from, w.horizon + 1);
    while (
      end < w.horizon + 1 &&
      at(room, r * width + end) - at(room, r * width + Math.min(from, w.horizon + 1)) < units
    )
      end++;
    bound = Math.max(bound, end + rest);
  }
  return Math.min(bound, w.horizon + 1);
}

/** Of pieces that each need more than 1 in k + 1 of the units, at most k run at once. */
function machineBound(w: WorkLayout, users: User[], r: number, head: Int32Array, tail: Int32Array): number {
  let bound = 0;
  for (let k = 1; k <= 4; k++) {
    const greedy = users.filter((u) => u.units * (k + 1) > at(w.capacity, r));
    for (const { i: first } of greedy) {
      const later = greedy.filter((u) => at(head, u.i) >= at(head, first));
      const byTail = later
        .map((u) => ({ rest: at(tail, u.i) - at(w.length, u.i), length: at(w.length, u.i) }))
        .sort((a, b) => b.rest - a.rest);
      let sum = 0;
      for (const x of byTail) {
        sum += x.length;
        bound = Math.max(bound, at(head, first) + Math.ceil(sum / k) + x.rest);
      }
    }
  }
  return Math.min(bound, w.horizon + 1);
}

const energyBound = (w: WorkLayout, from: number, room: Float64Array): number =>
  firstLeft(from, w.horizon, (by) => tooMuchWork(w, headsAndTails(w, by), room, by));

function refutedBound(w: WorkLayout, from: number): number {
  if (from > w.horizon) return from;
  const search = newSearch(w, new Int32Array(w.n));
  // A handful of contradictions at most: what the rules refute by themselves.
  return firstLeft(from, w.horizon, (by) => planWithin(search, by, 1).found === 'none');
}

/**
 * An end from `from` on that is not refuted, horizon + 1 where all are, with the one before it refuted, and so all before: no plan
 * within an end fits a sooner one. In steps that double, then halving: nights and weeks without a window are not gone through tick by
 * tick.
 */
export function firstLeft(from: number, horizon: number, refutes: (by: number) => boolean): number {
  let low = from - 1;
  let high = from;
  for (let step = 1; high <= horizon && refutes(high); step *= 2) {
    low = high;
    high = low + step;
  }
  high = Math.min(high, horizon + 1);
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (refutes(middle)) low = middle;
    else high = middle;
  }
  return high;
}
