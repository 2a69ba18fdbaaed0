import { NODE, node, PASSAGE, passage, type Regions, regionsOf } from './memory.ts';
import { entryAt, type Ordering, order } from './ordering.ts';
import type { Reduced } from './passages.ts';
import type { Shares } from './shares.ts';
import { type Tree, treeOf, weigh } from './weights.ts';

/** Where the records of passages lie, and those of the nodes that they join. */
export type CompiledPassages = {
  readonly count: number;
  /** Four for each: records of the nodes `from` and `to`, entry that joins them, end of its laws. */
  readonly ends: Int32Array;
};

/** The way through the matrix. Rows are weighted so that it is symmetric where that can be. */
export type Matrix = {
  /** Number of unknown pressures, in the order of their elimination; held ones lie behind. */
  readonly size: number;
  readonly symmetric: boolean;
  /** Number of entries right of the diagonal. */
  readonly entries: number;
  /** Row by row: how many entries, the nodes they lead to, then the entry that each pair of them fills or changes. */
  readonly down: Int32Array;
  /** Row by row from the last: how many entries, then the nodes they lead to, the last first. */
  readonly up: Int32Array;
};

type Held = { readonly v: number; readonly pressure: number };
type Compiled = {
  readonly memory: Float64Array;
  readonly regions: Regions;
  readonly matrix: Matrix;
  readonly passages: CompiledPassages;
  /** Record of each node, -1 where it is gone. */
  readonly row: Int32Array;
  readonly tree: Tree;
};

/** Orders the unknown pressures of a reduced network and lays its memory out, all but the laws of its links. */
export function compileMatrix(reduced: Reduced, shares: Shares, held: readonly Held[]): Compiled {
  const [count, links] = [shares.need.length, shares.share.length];
  const size = reduced.kept.length;
  const first = new Int32Array(count).fill(size);
  reduced.kept.forEach((v, i) => {
    first[v] = i;
  });
  const ordering = order(
    size,
    reduced.passages
      .map((p) => [first[p.from] ?? size, first[p.to] ?? size] as const)
      .filter(([a, b]) => a < size && b < size),
  );
  const row = new Int32Array(count).fill(-1);
  for (const v of reduced.kept) row[v] = NODE * (ordering.place[first[v] ?? 0] ?? 0);
  held.forEach(({ v }, i) => {
    row[v] = NODE * (size + i);
  });
  const tree = treeOf(reduced, count);
  const { weight, symmetric } = weigh(tree, shares);
  const regions = regionsOf({
    nodes: size + held.length,
    entries: ordering.columns.length,
    symmetric,
    passages: reduced.passages.length,
    laws: links,
  });
  const memory = new Float64Array(regions.end);
  for (const { v, pressure } of held) memory[(row[v] ?? 0) + node.pressure] = pressure;
  writeBalance(memory, regions, row, reduced, shares, weight);
  const ends = endsOf(reduced, row, ordering, regions);
  return {
    memory,
    regions,
    matrix: { size, symmetric, entries: ordering.columns.length, ...waysThrough(ordering, regions.upper) },
    passages: { count: reduced.passages.length, ends },
    row,
    tree,
  };
}

/** Writes what each node needs, gives to its passages and gets from them, all times its weight. */
export function writeBalance(
  memory: Float64Array,
  { passages: first }: Regions,
  row: Int32Array,
  { passages, kept }: Reduced,
  { need, leave, arrive }: Shares,
  weight: Float64Array,
): void {
  for (const v of kept) memory[(row[v] ?? 0) + node.need] = (weight[v] ?? 1) * (need[v] ?? 0);
  passages.forEach((p, e) => {
    memory[first + PASSAGE * e + passage.leave] = (leave[e] ?? 1) * (weight[p.from] ?? 1);
    memory[first + PASSAGE * e + passage.arrive] = (arrive[e] ?? 1) * (weight[p.to] ?? 1);
  });
}

/** Ends of all passages but for their laws. */
function endsOf(reduced: Reduced, row: Int32Array, ordering: Ordering, { upper }: Regions): Int32Array {
  const held = NODE * reduced.kept.length;
  const ends = new Int32Array(4 * reduced.passages.length);
  reduced.passages.forEach((p, e) => {
    const [i, j] = [row[p.from] ?? 0, row[p.to] ?? 0];
    const joins = i < held && j < held;
    // Held nodes have no entries: theirs go where nobody reads.
    const entry = joins ? entryAt(ordering, Math.min(i, j) / NODE, Math.max(i, j) / NODE) : ordering.columns.length;
    ends.set([i, j, upper + entry], 4 * e);
  });
  return ends;
}

function waysThrough({ start, columns, pairs }: Ordering, upper: number): Pick<Matrix, 'down' | 'up'> {
  const size = start.length - 1;
  const down = new Int32Array(size + columns.length + pairs.length);
  const up = new Int32Array(size + columns.length);
  let [d, u, pair] = [0, up.length, 0];
  for (let k = 0; k < size; k++) {
    const [first = 0, last = 0] = [start[k], start[k + 1]];
    const n = last - first;
    down[d++] = n;
    for (let x = first; x < last; x++) {
      const other = NODE * (columns[x] ?? 0);
      down[d++] = other;
      up[--u] = other;
    }
    up[--u] = n;
    for (let rest = (n * (n - 1)) / 2; rest > 0; rest--) down[d++] = upper + (pairs[pair++] ?? 0);
  }
  return { down, up };
}
