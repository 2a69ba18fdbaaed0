import { type Crossings, shortestWay, type WaySearch } from './boxWay.kernel.ts';

export type Point = readonly [number, number, number];
/** A box by two corners, m, the lower one first. */
export type Block = { readonly low: Point; readonly high: Point };

/** A way through the house: its corners, its straight stretches together, and its bends. m. */
export type InsideWay = { readonly points: readonly Point[]; readonly length: number; readonly bends: number };

/** Crossings beyond which no way is looked for: so many boxes are no picture of a house any more. */
export const crossingsMost = 150_000;
/** m that a bend counts: it only settles which of the shortest ways is taken. */
const perBend = 1e-4;

/**
 * The shortest way from one point to another along level and upright stretches: through `spaces` (anywhere where there are
 * none), round `things`. Exact: some shortest way runs along planes through the ends and the faces of boxes, so only those
 * are looked at. Undefined where none leads; `too-many` beyond `crossingsMost`.
 */
export function wayAmong(
  from: Point,
  to: Point,
  spaces: readonly Block[],
  things: readonly Block[],
): InsideWay | 'too-many' | undefined {
  const axes = [0, 1, 2] as const;
  const lines = axes.map((axis) => {
    const all = [from[axis], to[axis], ...[...spaces, ...things].flatMap((b) => [b.low[axis], b.high[axis]])];
    return all.sort((a, b) => a - b).filter((v, i) => i === 0 || v - (all[i - 1] ?? v) > 1e-9);
  });
  const [xs = [], ys = [], zs = []] = lines;
  const counts = [xs.length, ys.length, zs.length] as const;
  const total = counts[0] * counts[1] * counts[2];
  if (total > crossingsMost) return 'too-many';
  const indexOf = (p: Point): number => {
    const at = axes.map((axis) => (lines[axis] ?? []).findIndex((v) => Math.abs(v - p[axis]) <= 1e-9));
    return ((at[2] ?? 0) * counts[1] + (at[1] ?? 0)) * counts[0] + (at[0] ?? 0);
  };
  const crossings: Crossings = {
    counts,
    steps: [stepsOf(xs), stepsOf(ys), stepsOf(zs)],
    open: openOn(xs, ys, zs, spaces, things),
  };
  const search = searchFor(3 * total);
  const pointAt = (state: number): Point => {
    const at = Math.floor(state / 3);
    const [x, y] = [at % counts[0], Math.floor(at / counts[0]) % counts[1]];
    return [xs[x] ?? 0, ys[y] ?? 0, zs[Math.floor(at / (counts[0] * counts[1]))] ?? 0];
  };
  // Which way it leaves and arrives decides how its bends lie: of ways as short, the roomiest is taken.
  let best: InsideWay | undefined;
  for (const leaving of axes)
    for (const arriving of axes) {
      const [start, goal] = [3 * indexOf(from) + leaving, 3 * indexOf(to) + arriving];
      if (!shortestWay(crossings, start, goal, perBend, search)) continue;
      const points: Point[] = [];
      for (let state = goal; state >= 0; state = search.from[state] ?? -1) points.push(pointAt(state));
      const way = wayOf(points.reverse());
      if (best === undefined || better(way, best)) best = way;
    }
  return best;
}

const costOf = ({ length, bends }: InsideWay): number => length + bends * perBend;

function better(a: InsideWay, b: InsideWay): boolean {
  const by = costOf(a) - costOf(b);
  return Math.abs(by) > 1e-9 ? by < 0 : roomiest(a) > roomiest(b) + 1e-9;
}

/** m of the tightest stretch for each bend at its ends. */
function roomiest({ points }: InsideWay): number {
  const legs = legsOf(points);
  return Math.min(...legs.map((leg, i) => leg / Math.max(1, Number(i > 0) + Number(i < legs.length - 1))));
}

const stepsOf = (lines: readonly number[]): Float64Array =>
  Float64Array.from({ length: Math.max(0, lines.length - 1) }, (_, i) => (lines[i + 1] ?? 0) - (lines[i] ?? 0));

const searchFor = (states: number): WaySearch => ({
  cost: new Float64Array(states),
  from: new Int32Array(states),
  done: new Uint8Array(states),
  heapCost: new Float64Array(6 * states + 3),
  heapState: new Int32Array(6 * states + 3),
});

/** For each crossing a bit an axis: whether the stretch to the next crossing lies in a space and in no thing. */
function openOn(
  xs: readonly number[],
  ys: readonly number[],
  zs: readonly number[],
  spaces: readonly Block[],
  things: readonly Block[],
): Uint8Array {
  const lines = [xs, ys, zs];
  const open = new Uint8Array(xs.length * ys.length * zs.length);
  let at = 0;
  for (let k = 0; k < zs.length; k++)
    for (let j = 0; j < ys.length; j++)
      for (let i = 0; i < xs.length; i++, at++)
        for (const axis of [0, 1, 2] as const) {
          const place = [i, j, k];
          const next = lines[axis]?.[(place[axis] ?? 0) + 1];
          if (next === undefined) continue;
          const middle: [number, number, number] = [xs[i] ?? 0, ys[j] ?? 0, zs[k] ?? 0];
          middle[axis] = (middle[axis] + next) / 2;
          const within = spaces.length === 0 || spaces.some((b) => holds(b, middle, 1e-9));
          if (within && !things.some((b) => holds(b, middle, -1e-9))) open[at] = (open[at] ?? 0) | (1 << axis);
        }
  return open;
}

/** Whether a point lies in a box that is made larger all round by `by` m. */
const holds = ({ low, high }: Block, p: Point, by: number): boolean =>
  p.every((v, axis) => v >= (low[axis] ?? 0) - by && v <= (high[axis] ?? 0) + by);

/** Corners alone, and what lies between them. */
function wayOf(points: readonly Point[]): InsideWay {
  const axisOf = (a: Point, b: Point): number => a.findIndex((v, i) => Math.abs(v - (b[i] ?? v)) > 1e-12);
  const moved = points.filter((p, i) => i === 0 || axisOf(p, points[i - 1] ?? p) >= 0);
  const corners = moved.filter((p, i) => {
    const [before, after] = [moved[i - 1], moved[i + 1]];
    return !before || !after || axisOf(before, p) !== axisOf(p, after);
  });
  return {
    points: corners,
    length: legsOf(corners).reduce((sum, l) => sum + l, 0),
    bends: Math.max(0, corners.length - 2),
  };
}

/** m of each straight stretch of a way. */
export const legsOf = (points: readonly Point[]): number[] =>
  points.slice(1).map((p, i) => Math.hypot(...p.map((v, axis) => v - (points[i]?.[axis] ?? v))));

/**
 * m that the tightest stretch has over for its bends: each bend at an end of it takes one radius. Below 0 the bends do not
 * fit. Infinite for a way without bends.
 */
export function bendSpare(points: readonly Point[], radius: number): number {
  const legs = legsOf(points);
  const spare = legs.map((leg, i) => leg - radius * (Number(i > 0) + Number(i < legs.length - 1)));
  return legs.length < 2 ? Number.POSITIVE_INFINITY : Math.min(...spare);
}
