import { cover } from '../cover/cover.ts';
import type { Pattern } from '../cover/pattern.ts';
import type { Checking, CutProblem } from '../problem.ts';
import { areaBound, scaledShares } from './bounds.ts';
import { checkSheets, sheetSorts, type WholeSheets } from './checkSheets.ts';
import type { Filled } from './fill.ts';
import { type Flat, frontsOf } from './fronts.ts';
import { laySheets } from './laySheets.ts';
import { manyRuns } from './runs.ts';
import type { SheetJob, SheetPlan } from './sheetJob.ts';
import { exactMost, SheetOracle } from './sheetOracle.ts';

const effortUsual = { joins: 5_000_000, nodes: 400 };
const sharesMost = 16;
const visitsMost = 200_000;

const nothing = (problems: readonly CutProblem[]): SheetPlan => ({
  sheets: [],
  leftOut: [],
  cost: 0,
  bound: 0,
  proved: problems.length === 0,
  nodes: 0,
  joins: 0,
  problems,
});

/** Bound that needs no search: by area, and by dual-feasible functions on the largest sheet. */
function quickBound(w: WholeSheets, shares: readonly { bound: number }[]): number {
  const cheapest = Math.min(...w.stock.map((s) => s.cost));
  const strongest = shares[0]?.bound ?? 0;
  // A sheet that costs nothing holds no more than the largest: what is left has to be paid for.
  const free = w.stock.reduce((n, s) => n + (s.cost === 0 ? s.count : 0), 0);
  const paid = Math.min(...w.stock.map((s) => (s.cost > 0 ? s.cost : Infinity)));
  const beyond = free > 0 && paid < Infinity ? paid * Math.max(0, Math.ceil(strongest - free - 1e-6)) : 0;
  const sheets = Math.max(Math.max(strongest, 0) * cheapest, beyond);
  const equal = w.stock.every((s) => s.cost === cheapest);
  const rounded = (x: number) => (equal && cheapest > 0 ? cheapest * Math.ceil(x / cheapest - 1e-6) : x);
  return Math.max(rounded(sheets), rounded(areaBound(w.pieces, w.demand, w.stock, w.kerf)));
}

const patternOf = (f: Filled, n: number): Pattern => {
  const counts = new Int32Array(n);
  for (const i of f.set) counts[i] = (counts[i] ?? 0) + 1;
  return { kind: f.kind, counts };
};

/**
 * Packs rectangles on sheets by cuts that go right through, with any number of stages, at the least cost of stock. Lengths
 * in m, compared to a nanometre. Fills by simple rules first; where these do not meet the bound, patterns are generated
 * and searched, exactly up to nine pieces a sheet. Where the search ended, `proved`; else `bound` states the gap. Counts
 * end it, so that every machine finds the same. Bad input: nothing is packed and `problems` says all that is wrong; never
 * throws. Sources: `cutting.cover`, `cutting.dual-feasible`.
 */
export function packSheets(job: SheetJob): SheetPlan {
  const check: Checking = checkSheets(job);
  if (check.problems.length > 0) return nothing(check.problems);
  const sorts = sheetSorts(job, check);
  if (check.problems.length > 0 || sorts.pieces.length === 0) return nothing(check.problems);
  const effort = job.effort ?? effortUsual;
  const most = { w: Math.max(...sorts.stock.map((s) => s.w)), h: Math.max(...sorts.stock.map((s) => s.h)) };
  const shares = scaledShares(sorts.pieces, sorts.demand, most, sorts.kerf, sharesMost);
  const bound = quickBound(sorts, shares);
  const copies = sorts.demand.flatMap((n, i) => Array.from({ length: n }, () => i));
  const runs = manyRuns(sorts.pieces, copies, sorts.stock, sorts.kerf, bound);
  const fronts = frontsOf({
    pieces: sorts.pieces,
    kerf: sorts.kerf,
    most,
    shares: shares.map((s) => s.of),
    setMost: exactMost,
  });
  const limits = { joins: effort.joins, visits: visitsMost, patterns: 3000 };
  const oracle = new SheetOracle(sorts, fronts, limits, runs.met);
  const found = cover({
    demand: Int32Array.from(sorts.demand),
    kinds: sorts.stock.map(({ cost, count }) => ({ cost, count })),
    hardest: byHardness(sorts.pieces),
    oracle,
    pool: runs.met.map((f) => patternOf(f, sorts.pieces.length)),
    start: runs.best.map((f) => patternOf(f, sorts.pieces.length)),
    bound,
    nodesMost: effort.nodes,
    linearToo: job.linearToo ?? false,
  });
  const laid = laySheets(job, sorts, found.chosen, oracle);
  return {
    ...laid,
    cost: found.chosen.reduce((sum, p) => sum + (sorts.stock[p.kind]?.cost ?? 0), 0),
    bound: found.bound,
    ...(found.linear === undefined ? {} : { linear: found.linear }),
    proved: found.proved,
    nodes: found.nodes,
    joins: fronts.joins(),
    problems: [],
  };
}

const byHardness = (pieces: readonly Flat[]): number[] => {
  const size = (i: number) => (pieces[i]?.w ?? 0) * (pieces[i]?.h ?? 0);
  return pieces.map((_, i) => i).sort((a, b) => size(b) - size(a) || a - b);
};
