import { indicesOf, numbersOf } from './columns.ts';
import type { CompiledLaws, CompiledNetwork, WholeNetwork } from './compiled.ts';
import { compileLaws } from './laws.ts';
import { compileMatrix } from './matrix.ts';
import { LAW, PASSAGE, type Regions } from './memory.ts';
import { type Reduced, reduce } from './passages.ts';
import { networkProblems, stops } from './problems.ts';
import { sharesOf } from './shares.ts';
import type { NetworkLink, NetworkSpec } from './spec.ts';

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
  const reduced = broken ? nothing : reduce(spec, from, to);
  const links = broken ? [] : spec.links;
  const shares = sharesOf(reduced, { nodes: spec.nodes, links });
  const held = spec.nodes.flatMap((n, v) => (n.pressure === undefined ? [] : [{ v, pressure: n.pressure }]));
  const { memory, regions, matrix, passages, row, tree } = compileMatrix(reduced, shares, held);
  const laws = compileLaws(memory, regions, links, shares);
  lastLaws(passages.ends, laws, regions);
  return {
    nodeIds: spec.nodes.map((node) => node.id),
    linkIds: spec.links.map((l) => l.id),
    problems,
    broken,
    memory,
    regions,
    laws,
    passages,
    matrix,
    whole: wholeOf(spec, { from, to }, reduced, row, laws),
    reduced,
    tree,
    report: new Float64Array(4),
  };
}

/** Writes into the ends of each passage where its laws end. */
function lastLaws(ends: Int32Array, { place, passage }: CompiledLaws, { passages }: Regions): void {
  for (let e = 0; e < place.length; e++) {
    const last = (4 * ((passage[e] ?? 0) - passages)) / PASSAGE + 3;
    if (last < ends.length) ends[last] = Math.max(ends[last] ?? 0, (place[e] ?? 0) + LAW);
  }
}

const nothing: Reduced = {
  passages: [],
  walked: new Int32Array(0),
  ends: [],
  follow: [],
  kept: [],
  from: new Int32Array(0),
  to: new Int32Array(0),
};

function wholeOf(
  spec: NetworkSpec,
  { from, to }: { readonly from: Int32Array; readonly to: Int32Array },
  reduced: Reduced,
  row: Int32Array,
  { place, passage }: CompiledLaws,
): WholeNetwork {
  const ends = new Int32Array(4 * spec.links.length);
  const follow = new Int32Array(3 * reduced.follow.length);
  spec.links.forEach((_, e) => {
    ends[4 * e] = from[e] ?? 0;
    ends[4 * e + 1] = to[e] ?? 0;
    ends[4 * e + 2] = place[e] ?? 0;
    ends[4 * e + 3] = passage[e] ?? 0;
  });
  reduced.follow.forEach((f, i) => {
    follow[3 * i] = f.node;
    follow[3 * i + 1] = f.known;
    follow[3 * i + 2] = place[f.link] ?? 0;
  });
  return {
    ends,
    shares: writeGiven(spec.links, new Float64Array(2 * spec.links.length)),
    outflow: numbersOf(spec.nodes, (n) => n.outflow ?? 0),
    free: Int32Array.from(spec.nodes.flatMap((n, v) => (n.pressure === undefined ? [v] : []))),
    row,
    follow,
    followSign: numbersOf(reduced.follow, (f) => f.sign),
    sum: new Float64Array(spec.nodes.length),
  };
}

/** Writes the shares that leave and arrive of each link. */
export function writeGiven(links: readonly NetworkLink[], shares: Float64Array): Float64Array {
  links.forEach(({ leave = 1, arrive = 1 }, e) => {
    shares[2 * e] = leave;
    shares[2 * e + 1] = arrive;
  });
  return shares;
}
