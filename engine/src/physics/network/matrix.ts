import { entryAt, type Ordering, order } from './ordering.ts';
import type { Passage, Reduced } from './passages.ts';

/** Passages by the nodes that they join: unknown pressures in order of elimination, then held ones. */
export type CompiledPassages = {
  readonly count: number;
  /**
   * A record for each passage, and one more of zero flow: flow, miss of its law (Pa), conductance, what row `from`
   * gives and row `to` gets of its flow (weighted as the rows are), last step of flow.
   */
  readonly numbers: Float64Array;
  /** A record for each passage, and one more: records of the nodes `from` and `to`, entry that joins them, first law. */
  readonly ends: Int32Array;
};

/** Rows are weighted so that the matrix is symmetric where that can be; then `lower` is the same array as `upper`. */
export type Matrix = Omit<Ordering, 'place'> & {
  readonly size: number;
  readonly symmetric: boolean;
  /**
   * A record for each unknown, then for each held node: diagonal, right-hand side, inverse of the diagonal, change of
   * pressure in this step, pressure, m³/s that it needs (weighted).
   */
  readonly nodes: Float64Array;
  /** One more than there are entries: held nodes have none, and theirs go there. */
  readonly upper: Float64Array;
  readonly lower: Float64Array;
};

/** Numbers in a record of a passage, of a node, of the ends of a passage. */
export const PASSAGE = 6;
export const NODE = 6;
export const ENDS = 4;

type Held = { readonly v: number; readonly pressure: number };

/** Orders the unknown pressures of a reduced network and lays its matrix out. `row`: place of each node, -1 where gone. */
export function compileMatrix(
  reduced: Reduced,
  held: readonly Held[],
  count: number,
): { matrix: Matrix; passages: CompiledPassages; row: Int32Array } {
  const size = reduced.kept.length;
  const first = new Int32Array(count).fill(size);
  reduced.kept.forEach((v, i) => {
    first[v] = i;
  });
  const ends = reduced.passages.map((p) => [first[p.from] ?? size, first[p.to] ?? size] as const);
  const { place, start, columns, pairs, runs } = order(
    size,
    ends.filter(([a, b]) => a < size && b < size),
  );
  const row = new Int32Array(count).fill(-1);
  const nodes = new Float64Array(NODE * (size + held.length));
  reduced.kept.forEach((v, i) => {
    row[v] = place[i] ?? 0;
  });
  held.forEach(({ v, pressure }, i) => {
    row[v] = size + i;
    nodes[NODE * (size + i) + 4] = pressure;
  });
  const { weight, symmetric } = weigh(reduced.passages, reduced.kept, count);
  for (const v of reduced.kept) nodes[NODE * (row[v] ?? 0) + 5] = (weight[v] ?? 1) * (reduced.need[v] ?? 0);
  const upper = new Float64Array(columns.length + 1);
  const lower = symmetric ? upper : new Float64Array(upper.length);
  const passages = layOut(reduced.passages, row, size, weight, { start, columns });
  return {
    matrix: { size, symmetric, nodes, upper, lower, start, columns: columns.map((j) => j * NODE), pairs, runs },
    passages,
    row,
  };
}

function layOut(
  all: readonly Passage[],
  row: Int32Array,
  size: number,
  weight: Float64Array,
  ordering: Pick<Ordering, 'start' | 'columns'>,
): CompiledPassages {
  const numbers = new Float64Array(PASSAGE * (all.length + 1));
  const ends = new Int32Array(ENDS * (all.length + 1));
  all.forEach((p, e) => {
    const [i, j] = [row[p.from] ?? 0, row[p.to] ?? 0];
    numbers[PASSAGE * e + 3] = p.leave * (weight[p.from] ?? 1);
    numbers[PASSAGE * e + 4] = p.arrive * (weight[p.to] ?? 1);
    ends[ENDS * e] = NODE * i;
    ends[ENDS * e + 1] = NODE * j;
    const free = i < size && j < size;
    ends[ENDS * e + 2] = free ? entryAt(ordering, Math.min(i, j), Math.max(i, j)) : ordering.columns.length;
  });
  return { count: all.length, numbers, ends };
}

/**
 * Where air leaks out of a passage, its two rows see different flows, and the matrix is not symmetric. Weights carried
 * along a tree of passages mend that; whether they mend the loops too is looked up. By node.
 */
function weigh(
  passages: readonly Passage[],
  kept: readonly number[],
  count: number,
): { weight: Float64Array; symmetric: boolean } {
  const weight = new Float64Array(count).fill(1);
  if (passages.every((p) => p.leave === p.arrive)) return { weight, symmetric: true };
  const touching = new Map(kept.map((v) => [v, [] as Passage[]]));
  const inner = passages.filter((p) => touching.has(p.from) && touching.has(p.to));
  for (const p of inner) for (const v of [p.from, p.to]) touching.get(v)?.push(p);
  const seen = new Set<number>();
  for (const root of kept) {
    const open = seen.has(root) ? [] : [root];
    seen.add(root);
    for (let v = open.pop(); v !== undefined; v = open.pop())
      for (const p of touching.get(v) ?? []) {
        const other = p.from === v ? p.to : p.from;
        if (seen.has(other)) continue;
        seen.add(other);
        weight[other] = (weight[v] ?? 1) * (p.from === v ? p.leave / p.arrive : p.arrive / p.leave);
        open.push(other);
      }
  }
  const alike = (p: Passage): boolean => {
    const [a, b] = [p.leave * (weight[p.from] ?? 1), p.arrive * (weight[p.to] ?? 1)];
    return Math.abs(a - b) <= 1e-14 * a;
  };
  return { weight, symmetric: inner.every(alike) };
}
