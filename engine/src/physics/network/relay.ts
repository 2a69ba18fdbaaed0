import { type CompiledNetwork, compileNetwork, sharesOf } from './compile.ts';
import { writeLaw, writeShares } from './laws.ts';
import { weigh, writeBalance } from './matrix.ts';
import { reduce } from './passages.ts';
import { linkProblems, type NetworkProblem } from './problems.ts';
import type { NetworkLink, NetworkNode, NetworkSpec } from './spec.ts';

/**
 * The lay-out of `before` made to serve `now`: where nodes and ends of links are the same, only the laws of links that
 * are other objects than before are written anew, in place, and what hangs on the shares that leave and arrive where
 * one has changed; where more differs, or anything is wrong, all is laid out again. What is solved with it is the same
 * to the bit either way.
 */
export function relay(net: CompiledNetwork, before: NetworkSpec, now: NetworkSpec): CompiledNetwork {
  if (net.problems.length > 0 || !sameNodes(before.nodes, now.nodes) || before.links.length !== now.links.length)
    return compileNetwork(now);
  const wrong: NetworkProblem[] = [];
  let shares = true;
  for (let e = 0; e < now.links.length; e++) {
    const was = before.links[e];
    const link = now.links[e];
    if (was === undefined || link === undefined || was === link) continue;
    linkProblems(link, wrong);
    if (wrong.length > 0 || !sameEnds(was, link)) return compileNetwork(now);
    writeLaw(net.memory, net.laws, e, link);
    shares &&= sameShares(was, link);
  }
  return shares || share(net, now) ? net : compileNetwork(now);
}

/** Writes anew all that hangs on shares. False: the matrix no longer is symmetric, or has become so. */
function share(net: CompiledNetwork, now: NetworkSpec): boolean {
  const { memory, laws, regions, whole } = net;
  const end = (place: number): Int32Array => laws.place.map((_, e) => whole.ends[4 * e + place] ?? 0);
  const reduced = reduce(now, end(0), end(1));
  const { weight, symmetric } = weigh(reduced, now.nodes.length);
  if (symmetric !== net.matrix.symmetric) return false;
  writeBalance(memory, regions, whole.row, reduced, weight);
  writeShares(memory, laws, reduced.places);
  sharesOf(now.links, whole.shares);
  now.links.forEach((link, e) => {
    if ((laws.place[e] ?? 0) >= laws.still) writeLaw(memory, laws, e, link);
  });
  return true;
}

const sameNodes = (a: readonly NetworkNode[], b: readonly NetworkNode[]): boolean =>
  a === b ||
  (a.length === b.length &&
    a.every((n, i) => n.id === b[i]?.id && n.pressure === b[i]?.pressure && n.outflow === b[i]?.outflow));

const sameEnds = (a: NetworkLink, b: NetworkLink): boolean =>
  a.id === b.id && a.kind === b.kind && a.from === b.from && a.to === b.to;

const sameShares = (a: NetworkLink, b: NetworkLink): boolean =>
  (a.leave ?? 1) === (b.leave ?? 1) && (a.arrive ?? 1) === (b.arrive ?? 1);
