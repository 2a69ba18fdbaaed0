import { factorise, forward, logDensity } from '../../physics/bayes/index.ts';
import { methods, ownScatter } from '../methods.ts';
import type { Means } from '../result.ts';
import type { Cause, ResponseTable } from './table.ts';

/** One number held against the table: a place among its channels. `baseIn`: the house’s own draw may still be in it. */
export type Heard = {
  readonly channel: number;
  readonly value: number;
  readonly means: Means;
  readonly repeats: number;
  readonly baseIn: boolean;
};

/** A cause at one severity as readings would show it: means by channel, and the half-known severity's reach. */
export type Point = {
  readonly logWeight: number;
  readonly values: readonly number[];
  readonly spreads: readonly (readonly number[])[];
  readonly baseOnly: boolean;
  /** Something that is not in the table may move anything. */
  readonly open: boolean;
};

const own: ReadonlySet<string> = new Set(['blower-setting', 'other-speed']);

/** A cause's severities, each standing for its share of the range between its neighbours. */
export function pointsOf(cause: Cause): readonly Point[] {
  const { nodes, kind } = cause;
  return nodes.map((node, i): Point => {
    const [before, after] = [nodes[i - 1] ?? node, nodes[i + 1] ?? node];
    const steps = before === node || after === node ? 1 : 2;
    const reach = node.values.map((_, c) => ((after.values[c] ?? 0) - (before.values[c] ?? 0)) / steps / Math.sqrt(12));
    return {
      logWeight: Math.log(node.weight),
      values: node.values,
      spreads: nodes.length > 1 && !own.has(kind) ? [reach] : [],
      baseOnly: kind === 'base-load',
      open: kind === 'other',
    };
  });
}

/** Share, and K, by which an unnamed cause moves things. Invented: `commissioning.priors`. */
const openShare = 0.35;
const openKelvin = 4;

/** Densities of readings under points of one table: what they have in common is laid out once. */
export function densities(table: ResponseTable, heard: readonly Heard[]) {
  const n = heard.length;
  const rows = rowsOf(table, heard);
  const [cov, mean, white, ratio] = [n * n, n, n, n].map((size) => new Float64Array(size)) as Numbers;
  /** Mean and covariance of all rows under a point; false where two rows are one. */
  const lay = (point: Point): boolean => {
    rows.forEach((r, i) => {
      const value = point.baseOnly && !r.baseIn ? r.base : (point.values[r.channel] ?? 0);
      mean[i] = value;
      ratio[i] = r.warm || r.base === 0 ? 1 : Math.min(ratioMost, Math.abs(value / r.base));
    });
    rows.forEach((a, i) => {
      for (let j = 0; j <= i; j++) {
        const b = rows[j] as Row;
        let sum = (a.doubts[j] ?? 0) * (ratio[i] ?? 1) * (ratio[j] ?? 1);
        for (const reach of point.spreads) sum += (reach[a.channel] ?? 0) * (reach[b.channel] ?? 0);
        if (a.means === b.means && a.warm === b.warm)
          sum += a.warm ? a.fixed ** 2 : a.fixed ** 2 * (mean[i] ?? 0) * (mean[j] ?? 0);
        if (a.channel === b.channel) sum += ownVariance(a, mean[i] ?? 0, point.open);
        if (i === j) sum += (a.random * (a.warm ? 1 : (mean[i] ?? 0))) ** 2 + a.floor ** 2;
        cov[i * n + j] = sum;
      }
    });
    return factorise(cov, n);
  };
  const differ = (count: number): void => {
    for (let i = 0; i < count; i++) white[i] = (rows[i]?.value ?? 0) - (mean[i] ?? 0);
    for (let i = count; i < n; i++) white[i] = 0;
    forward(cov, n, white);
  };
  return {
    /** Logarithm of the chance of all readings under a point. */
    log(point: Point): number {
      if (n === 0) return 0;
      if (!lay(point)) return Number.NEGATIVE_INFINITY;
      differ(n);
      return logDensity(cov, n, white);
    },
    /** What the last row would read under a point, given all rows before it. */
    last(point: Point): { readonly mean: number; readonly sd: number } {
      lay(point);
      differ(n - 1);
      let shift = 0;
      for (let k = 0; k < n - 1; k++) shift += (cov[(n - 1) * n + k] ?? 0) * (white[k] ?? 0);
      return { mean: (mean[n - 1] ?? 0) + shift, sd: cov[n * n - 1] ?? 1 };
    },
  };
}

type Numbers = [Float64Array, Float64Array, Float64Array, Float64Array];

/** Times the sound value beyond which the plan's doubts grow no further. */
const ratioMost = 3;

type Row = Heard & {
  readonly warm: boolean;
  readonly base: number;
  readonly fixed: number;
  /** Of the average of its repeats. */
  readonly random: number;
  readonly floor: number;
  readonly own: number;
  /** With every row, what the plan's doubts have in common. */
  readonly doubts: readonly number[];
};

function rowsOf(table: ResponseTable, heard: readonly Heard[]): readonly Row[] {
  return heard.map((h) => {
    const group = table.channels[h.channel]?.group ?? 'pressure';
    const { fixed, random, floor } = methods[h.means];
    return {
      ...h,
      warm: group === 'temperature',
      base: table.base[h.channel] ?? 0,
      fixed,
      random: random / Math.sqrt(h.repeats),
      floor: floor + 1e-9,
      own: ownScatter[group],
      doubts: heard.map((b) =>
        table.doubts.reduce((sum, { moves }) => sum + (moves[h.channel] ?? 0) * (moves[b.channel] ?? 0), 0),
      ),
    };
  });
}

/** What differs from the plan in this place alone; all of its readings share it. */
function ownVariance({ own, warm, base }: Row, mean: number, open: boolean): number {
  const share = Math.hypot(own, open ? (warm ? openKelvin : openShare) : 0);
  return (warm ? share : share * (open ? Math.max(Math.abs(mean), Math.abs(base)) : mean)) ** 2;
}
