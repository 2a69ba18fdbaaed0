import { indicesOf, numbersOf } from './columns.ts';
import { type CompiledLaws, compileLaws } from './laws.ts';
import { type CompiledPassages, compileMatrix, ENDS, type Matrix } from './matrix.ts';
import { type Reduced, reduce } from './passages.ts';
import { type NetworkProblem, networkProblems, stops } from './problems.ts';
import type { NetworkSpec } from './spec.ts';

/**
 * A network laid out once in flat arrays: dead ends and pieces in series taken out, unknown pressures in the order of
 * their elimination, and the scratch of its solver. One solution at a time.
 */
export type CompiledNetwork = {
  readonly nodeIds: readonly string[];
  readonly linkIds: readonly string[];
  readonly problems: readonly NetworkProblem[];
  /** A problem leaves nothing to solve. */
  readonly broken: boolean;
  /** Largest held pressure, Pa: differences are known to its last digits only. */
  readonly pressureMost: number;
  readonly laws: CompiledLaws;
  readonly passages: CompiledPassages;
  readonly matrix: Matrix;
  readonly whole: WholeNetwork;
  /** What a look at the laws found: worst miss and largest drop of a passage, Pa; slope of power along the last step. */
  readonly report: Float64Array;
};

/** The network as told, for pressures at every node and the balance of air at the free ones. */
export type WholeNetwork = {
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly leave: Float64Array;
  readonly arrive: Float64Array;
  readonly outflow: Float64Array;
  readonly free: Int32Array;
  /** Place of a node among unknown and held pressures; -1: it follows from another. */
  readonly row: Int32Array;
  /** Node, node it follows from, law of the link between; and whether pressure falls (1) or rises along the link. */
  readonly follow: Int32Array;
  readonly followSign: Float64Array;
  readonly sum: Float64Array;
};

/**
 * Lays a network out. A link that names a node which is not there is our own fault and throws. Anything else that
 * leaves it without an answer stands in `problems`, and solving it gives "not converged".
 */
export function compileNetwork(spec: NetworkSpec): CompiledNetwork {
  const index = new Map(spec.nodes.map((node, i) => [node.id, i]));
  const place = (id: string): number => {
    const i = index.get(id);
    if (i === undefined) throw new Error(`assert: a link names the node ${id}, which is not there`);
    return i;
  };
  const from = indicesOf(spec.links, (l) => place(l.from));
  const to = indicesOf(spec.links, (l) => place(l.to));
  const problems = networkProblems(spec);
  const broken = problems.some(stops);
  const reduced = broken ? nothing(spec) : reduce(spec, from, to);
  const laws = compileLaws(broken ? [] : spec.links, reduced.places, reduced.passages.length);
  const held = spec.nodes.flatMap((n, v) => (n.pressure === undefined ? [] : [{ v, pressure: n.pressure }]));
  const { matrix, passages, row } = compileMatrix(reduced, held, spec.nodes.length);
  firstLaws(passages.ends, laws.passage);
  return {
    nodeIds: spec.nodes.map((node) => node.id),
    linkIds: spec.links.map((l) => l.id),
    problems,
    broken,
    pressureMost: held.reduce((most, h) => Math.max(most, Math.abs(h.pressure)), 0),
    laws,
    passages,
    matrix,
    whole: wholeOf(spec, from, to, reduced, row, laws),
    report: new Float64Array(3),
  };
}

/** Writes into the ends of each passage where its laws begin; they end where the next one's begin. */
function firstLaws(ends: Int32Array, passage: Int32Array): void {
  for (let p = 0; p < ends.length / ENDS; p++) ends[ENDS * p + 3] = passage.length;
  for (let e = passage.length - 1; e >= 0; e--) ends[ENDS * (passage[e] ?? 0) + 3] = e;
}

const nothing = (spec: NetworkSpec): Reduced => ({
  places: [],
  passages: [],
  follow: [],
  need: new Float64Array(spec.nodes.length),
  kept: [],
});

function wholeOf(
  spec: NetworkSpec,
  from: Int32Array,
  to: Int32Array,
  reduced: Reduced,
  row: Int32Array,
  laws: CompiledLaws,
): WholeNetwork {
  return {
    from,
    to,
    leave: numbersOf(spec.links, (l) => l.leave ?? 1),
    arrive: numbersOf(spec.links, (l) => l.arrive ?? 1),
    outflow: numbersOf(spec.nodes, (n) => n.outflow ?? 0),
    free: indicesOf(spec.nodes, (n) => (n.pressure === undefined ? 1 : 0)),
    row,
    follow: Int32Array.from(reduced.follow.flatMap((f) => [f.node, f.known, laws.place[f.link] ?? 0])),
    followSign: numbersOf(reduced.follow, (f) => f.sign),
    sum: new Float64Array(spec.nodes.length),
  };
}
