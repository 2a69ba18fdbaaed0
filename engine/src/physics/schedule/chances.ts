import { countWay, type Life, live } from './chance.kernel.ts';
import type { Placed } from './checkPlan.ts';
import { atShare, quantilesOf } from './durations.ts';
import { inspectWork } from './inspectWork.ts';
import { listByTime, ranksOf } from './justify.kernel.ts';
import { type LaidTasks, layTasks } from './layTasks.ts';
import { fraction, seeded } from './seeded.ts';
import { tickUp } from './windows.ts';
import type { Span, WorkSpec } from './work.ts';

/** What may become of a plan, out of many lives of it. Shares are 0 to 1; minutes from the plan's start. */
export type Chances = {
  /** Ends of all work, rising: one for each life. Above the horizon: something found no window any more. */
  readonly ends: Float64Array;
  readonly pieces: readonly {
    readonly task: string;
    readonly piece: string;
    /** Share of lives in which it lies on the way to the end: what makes everything late when it slips. */
    readonly decides: number;
    /** Share in which it does not fit the window it is put in: somebody works past it. */
    readonly overruns: number;
  }[];
  /** Chance that each deadline is kept. */
  readonly deadlines: readonly { readonly task: string; readonly chance: number }[];
  /** For each span asked about: share of lives in which nothing begun in it runs past it. */
  readonly inTime: readonly number[];
};

export type ChanceOptions = {
  /** Lives; default 1000. */
  readonly lives?: number;
  readonly seed?: number;
  /** Windows whose ends are asked about. */
  readonly spans?: readonly Span[];
};

/**
 * Lives a plan many times with lengths drawn from their three points, its order on everything shared kept, each piece in a window that
 * is long enough for what it is planned with. Undefined where the spec holds something refused, or a piece has no place.
 */
export function chancesOf(spec: WorkSpec, plan: readonly Placed[], options: ChanceOptions = {}): Chances | undefined {
  if (inspectWork(spec).length > 0) return undefined;
  const x = layTasks(spec);
  if ('refused' in x) return undefined;
  const starts = startsOf(x, plan);
  if (!starts) return undefined;
  const { lives = 1000, seed = 1 } = options;
  const { w, laid, ticks } = x;
  const life = lifeOf(x, starts);
  const quantiles = laid.map(({ piece }) => quantilesOf(piece?.minutes ?? 0));
  const random = seeded(seed);
  const ways = new Int32Array(w.n);
  const over = new Int32Array(w.n);
  const kept = new Int32Array(w.n);
  const ends = new Float64Array(lives);
  const spans = spansIn(options.spans ?? [], ticks.step);
  const past = new Int32Array(spans.length);
  for (let k = 0; k < lives; k++) {
    quantiles.forEach((q, i) => {
      const share = fraction(random);
      life.length[i] = laid[i]?.piece?.pinned ? -1 : atShare(q, share) / ticks.step;
    });
    ends[k] = live(life) * ticks.step;
    countWay(life, ways);
    spans.forEach((s, k) => {
      if (life.over.some((o, i) => o === 1 && (life.starts[i] ?? 0) >= s.from && (life.starts[i] ?? 0) < s.to))
        past[k] = (past[k] ?? 0) + 1;
    });
    for (let i = 0; i < w.n; i++) {
      over[i] = (over[i] ?? 0) + (life.over[i] ?? 0);
      const deadline = (laid[i]?.task.deadline ?? Number.POSITIVE_INFINITY) + 1e-9;
      if ((life.ends[i] ?? 0) <= w.horizon && (life.ends[i] ?? 0) * ticks.step <= deadline)
        kept[i] = (kept[i] ?? 0) + 1;
    }
  }
  const share = (n: number | undefined) => (n ?? 0) / lives;
  return {
    ends: ends.sort(),
    pieces: laid.flatMap(({ task, piece }, i) =>
      piece ? [{ task: task.id, piece: piece.id, decides: share(ways[i]), overruns: share(over[i]) }] : [],
    ),
    deadlines: laid.flatMap(({ task }, i) =>
      task.deadline !== undefined && laid[i + 1]?.task !== task ? [{ task: task.id, chance: share(kept[i]) }] : [],
    ),
    inTime: [...past].map((n) => 1 - share(n)),
  };
}

const spansIn = (spans: readonly Span[], step: number): Span[] =>
  spans.map((s) => ({ from: s.from / step, to: s.to / step }));

/** Chance that all is done by a minute. */
export function chanceBy({ ends }: Chances, minute: number): number {
  return ends.filter((e) => e <= minute + 1e-9).length / Math.max(1, ends.length);
}

function startsOf(x: LaidTasks, plan: readonly Placed[]): Int32Array | undefined {
  const at = new Map(plan.map((p) => [JSON.stringify([p.task, p.piece]), tickUp(p.from, x.ticks.step)]));
  const starts = new Int32Array(x.w.n);
  for (const i of x.w.order) {
    const { task, piece } = x.laid[i] ?? {};
    const placed = at.get(JSON.stringify([task?.id, piece?.id]));
    if (piece && placed === undefined) return undefined;
    let ready = placed ?? 0;
    if (!piece)
      for (let k = x.w.beforeFrom[i] ?? 0; k < (x.w.beforeFrom[i + 1] ?? 0); k++) {
        const p = x.w.before[k] ?? 0;
        ready = Math.max(ready, x.w.table[p]?.end[starts[p] ?? 0] ?? 0);
      }
    starts[i] = Math.min(x.w.horizon, Math.max(0, ready));
  }
  return starts;
}

function lifeOf({ w, laid }: LaidTasks, starts: Int32Array): Life {
  const rank = new Int32Array(w.n);
  ranksOf(w, rank);
  const list = new Int32Array(w.n);
  listByTime(w, starts, false, rank, new Float64Array(w.n), list);
  return {
    w,
    list,
    pace: [...laid.map((l) => l.pace), new Uint8Array(0)],
    length: new Float64Array(w.n).fill(-1),
    use: Int32Array.from(w.base),
    starts: new Int32Array(w.n),
    ends: new Int32Array(w.n),
    over: new Uint8Array(w.n),
    waited: new Int32Array(w.n).fill(-1),
    begun: new Int32Array(w.m),
  };
}
