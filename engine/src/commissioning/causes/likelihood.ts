import { factorise, forward, logDensity } from '../../physics/bayes/index.ts';
import { floorOf, methods, ownScatter } from '../methods.ts';
import type { Means } from '../visit.ts';
import { fillCovariance, type RowNumbers } from './covariance.kernel.ts';
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

/** Times the sound value beyond which the plan's doubts grow no further. */
const ratioMost = 3;
/** Severities of two causes at once. */
const spreadsMost = 2;

/** Densities of readings under points of one table: what they have in common is laid out once. */
export function densities(table: ResponseTable, heard: readonly Heard[]) {
  const n = heard.length;
  const rows = rowNumbers(table, heard);
  const baseIn = heard.map((h) => h.baseIn);
  const [covariance, mean] = [new Float64Array(n * n), new Float64Array(n)];
  const [white, reach] = [new Float64Array(n), new Float64Array(n * spreadsMost)];
  /** Mean and factored covariance of all rows under a point; false where two rows are one. */
  const lay = ({ values, spreads, baseOnly, open }: Point): boolean => {
    for (let i = 0; i < n; i++) {
      const c = rows.channel[i] ?? 0;
      mean[i] = baseOnly && !baseIn[i] ? (rows.base[i] ?? 0) : (values[c] ?? 0);
      for (let k = 0; k < spreads.length; k++) reach[k * n + i] = spreads[k]?.[c] ?? 0;
    }
    const [share, kelvin] = open ? [openShare, openKelvin] : [0, 0];
    fillCovariance(rows, mean, reach, spreads.length, ratioMost, share, kelvin, covariance);
    return factorise(covariance, n);
  };
  const differ = (count: number): void => {
    for (let i = 0; i < n; i++) white[i] = i < count ? (heard[i]?.value ?? 0) - (mean[i] ?? 0) : 0;
    forward(covariance, n, white);
  };
  return {
    /** Logarithm of the chance of all readings under a point. */
    log(point: Point): number {
      if (n === 0) return 0;
      if (!lay(point)) return Number.NEGATIVE_INFINITY;
      differ(n);
      return logDensity(covariance, n, white);
    },
    /** What the last row would read under a point, given all rows before it. */
    last(point: Point): { readonly mean: number; readonly sd: number } {
      lay(point);
      differ(n - 1);
      let shift = 0;
      for (let k = 0; k < n - 1; k++) shift += (covariance[(n - 1) * n + k] ?? 0) * (white[k] ?? 0);
      return { mean: (mean[n - 1] ?? 0) + shift, sd: covariance[n * n - 1] ?? 1 };
    },
  };
}

function rowNumbers({ channels, base, doubts }: ResponseTable, heard: readonly Heard[]): RowNumbers {
  const group = (h: Heard) => channels[h.channel]?.group ?? 'pressure';
  const numbers = (of: (h: Heard) => number) => Float64Array.from(heard, of);
  const names = [...new Set(heard.map((h) => h.means))];
  const common = (a: Heard, b: Heard) =>
    doubts.reduce((sum, { moves }) => sum + (moves[a.channel] ?? 0) * (moves[b.channel] ?? 0), 0);
  return {
    n: heard.length,
    warm: Uint8Array.from(heard, (h) => (group(h) === 'temperature' ? 1 : 0)),
    channel: Int32Array.from(heard, (h) => h.channel),
    method: Int32Array.from(heard, (h) => names.indexOf(h.means)),
    base: numbers((h) => base[h.channel] ?? 0),
    fixed: numbers((h) => methods[h.means].fixed),
    random: numbers((h) => methods[h.means].random / Math.sqrt(h.repeats)),
    floor: numbers((h) => floorOf(group(h), h.means) + 1e-9),
    own: numbers((h) => ownScatter[group(h)]),
    doubts: Float64Array.from(heard.flatMap((a) => heard.map((b) => common(a, b)))),
  };
}
