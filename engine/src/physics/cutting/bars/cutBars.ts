import { cover } from '../cover/cover.ts';
import type { Pattern, StockKind } from '../cover/pattern.ts';
import { Checking, type CutProblem, sortsMost } from '../problem.ts';
import { divisorOf, wholeOf } from '../whole.ts';
import type { BarJob, BarPiece, Sort } from './barJob.ts';
import { barOracle } from './barOracle.ts';
import { bestFit, lengthBound } from './bestFit.ts';
import { fullestFit } from './fullestFit.ts';
import { type CutBar, layBars } from './layBars.ts';

export type BarPlan = {
  readonly bars: readonly CutBar[];
  /** Pieces for which the counted stock did not do. */
  readonly leftOut: readonly { readonly piece: string; readonly copies: number }[];
  /** Cost of the stock, and what no plan costs less than. */
  readonly cost: number;
  readonly bound: number;
  /** The same before rounding up, where the linear programme over all patterns was priced out. */
  readonly linear?: number;
  readonly proved: boolean;
  readonly nodes: number;
  readonly problems: readonly CutProblem[];
};

const nothing = (problems: readonly CutProblem[]): BarPlan => ({
  bars: [],
  leftOut: [],
  cost: 0,
  bound: 0,
  proved: problems.length === 0,
  nodes: 0,
  problems,
});

function checked({ pieces, stock, kerf, remnantLeast }: BarJob): Checking {
  const c = new Checking();
  c.atLeastNought(['kerf'], kerf);
  c.atLeastNought(['remnantLeast'], remnantLeast);
  if (stock.length === 0) c.say('no-stock', ['stock'], 0);
  stock.forEach((s, i) => {
    c.positive(['stock', i, 'length'], s.length);
    c.stock(['stock', i], s);
  });
  const longest = Math.max(0, ...stock.map((s) => s.length));
  pieces.forEach((p, i) => {
    if (!c.positive(['pieces', i, 'length'], p.length) || !c.count(['pieces', i, 'count'], p.count)) return;
    if (stock.length > 0 && wholeOf(p.length) > wholeOf(longest))
      c.say('larger-than-stock', ['pieces', i, 'length'], p.length, { max: longest });
  });
  c.pieces(pieces);
  return c;
}

function sortsOf(pieces: readonly BarPiece[]): Sort[] {
  const byLength = new Map<number, string[]>();
  for (const p of pieces) {
    const whole = wholeOf(p.length);
    const ids = byLength.get(whole) ?? [];
    for (let n = 0; n < p.count; n++) ids.push(p.id);
    byLength.set(whole, ids);
  }
  return [...byLength].map(([length, ids]) => ({ length, ids })).sort((a, b) => b.length - a.length);
}

/** Each bar cut as its pattern says, without copies that nobody wants any more. */
function withoutSpare(chosen: readonly Pattern[], sorts: readonly Sort[]): Pattern[] {
  const left = sorts.map((s) => s.ids.length);
  return chosen.map(({ kind, counts }) => ({
    kind,
    counts: counts.map((n, i) => {
      const take = Math.min(n, left[i] ?? 0);
      left[i] = (left[i] ?? 0) - take;
      return take;
    }),
  }));
}

/** Lengths above which the programme over patterns is dear, and a better plan to begin with is worth its time. */
const lengthsMany = 100;

/** A node of many lengths takes far longer. */
const nodesUsual = (lengths: number): number =>
  Math.max(10, Math.floor(2000 * Math.min(1, lengthsMany / lengths) ** 6));

/** The best fit; of many lengths from one stock the fullest bars where they are fewer. */
function firstPlan(
  pieces: readonly number[],
  demand: readonly number[],
  stock: readonly number[],
  kinds: readonly StockKind[],
): Pattern[] {
  const fit = bestFit(pieces, demand, stock, kinds);
  const [only, other] = stock;
  if (pieces.length < lengthsMany || only === undefined || other !== undefined || kinds[0]?.count !== Infinity)
    return fit;
  const fullest = fullestFit(pieces, demand, only);
  return fullest.length < fit.length ? fullest : fit;
}

/**
 * Cuts pieces from straight stock at the least cost, or from the fewest. A cut takes the kerf; a piece that ends with the
 * stock needs none. Lengths in m, compared to a nanometre. Exact where `proved`; else `bound` says how far off it can be.
 * Bad input: nothing is cut and `problems` says all that is wrong; never throws. Source: `cutting.cover`.
 */
export function cutBars(job: BarJob): BarPlan {
  const check = checked(job);
  const kept = check.problems.length > 0 ? [] : sortsOf(job.pieces);
  if (kept.length > sortsMost) check.say('too-many', ['pieces'], kept.length, { max: sortsMost });
  if (check.problems.length > 0 || kept.length === 0) return nothing(check.problems);
  const kerf = wholeOf(job.kerf);
  const sizes = [...kept.map((s) => s.length), ...job.stock.map((s) => wholeOf(s.length))].map((x) => x + kerf);
  const unit = divisorOf(sizes);
  const whole = sizes.map((x) => x / unit);
  const [pieces, stock] = [whole.slice(0, kept.length), whole.slice(kept.length)];
  const demand = kept.map((k) => k.ids.length);
  const kinds = job.stock.map((s) => ({ cost: s.cost ?? 1, count: s.count ?? Infinity }));
  const start = firstPlan(pieces, demand, stock, kinds);
  const found = cover({
    demand: Int32Array.from(demand),
    kinds,
    hardest: kept.map((_, i) => i),
    oracle: barOracle({ pieces, stock }),
    pool: start,
    start,
    bound: lengthBound(pieces, demand, stock, kinds),
    nodesMost: job.nodesMost ?? nodesUsual(kept.length),
    linearToo: job.linearToo ?? false,
  });
  const chosen = withoutSpare(found.chosen, kept);
  return {
    bars: layBars(job, kept, chosen),
    leftOut: leftOutOf(kept, found.leftOut),
    cost: chosen.reduce((sum, p) => sum + (job.stock[p.kind]?.cost ?? 1), 0),
    bound: found.bound,
    ...(found.linear === undefined ? {} : { linear: found.linear }),
    proved: found.proved,
    nodes: found.nodes,
    problems: [],
  };
}

/** The last of each sort are those that are missing. */
function leftOutOf(sorts: readonly Sort[], missing: Int32Array): BarPlan['leftOut'] {
  const copies = new Map<string, number>();
  sorts.forEach((s, i) => {
    for (const id of s.ids.slice(s.ids.length - (missing[i] ?? 0))) copies.set(id, (copies.get(id) ?? 0) + 1);
  });
  return [...copies].map(([piece, n]) => ({ piece, copies: n }));
}
