import { compileNetwork, writeGiven } from './compile.ts';
import type { CompiledNetwork } from './compiled.ts';
import { writeLaw, writeShares } from './laws.ts';
import { writeBalance } from './matrix.ts';
import { node } from './memory.ts';
import { idle, linkProblems, type NetworkProblem } from './problems.ts';
import { sharesOf } from './shares.ts';
import type { NetworkLink, NetworkNode, NetworkSpec } from './spec.ts';
import { weigh } from './weights.ts';

/**
 * The lay-out of `before` made to serve `now`: where nodes and ends of links are the same, only the laws of links that
 * are other objects than before are written anew, in place, as are held pressures, and what hangs on what nodes need and
 * on the shares that leave and arrive where one has changed; where more differs, or anything is wrong, all is laid out
 * again. What is solved with it is the same to the bit either way.
 */
export function relay(net: CompiledNetwork, before: NetworkSpec, now: NetworkSpec): CompiledNetwork {
  const nodes = nodesFrom(before.nodes, now.nodes);
  if (net.problems.length > 0 || nodes === 'others' || before.links.length !== now.links.length)
    return compileNetwork(now);
  const wrong: NetworkProblem[] = [];
  if (nodes === 'changed') idle(now, wrong);
  let shares = nodes === 'same';
  for (let e = 0; e < now.links.length; e++) {
    const was = before.links[e];
    const link = now.links[e];
    if (was === undefined || link === undefined || was === link) continue;
    linkProblems(link, wrong);
    if (wrong.length > 0 || !sameEnds(was, link)) return compileNetwork(now);
    writeLaw(net.memory, net.laws, e, link);
    shares &&= sameShares(was, link);
  }
  if (wrong.length > 0) return compileNetwork(now);
  if (nodes === 'changed') hold(net, now.nodes);
  return shares || share(net, now) ? net : compileNetwork(now);
}

/** Writes anew all that hangs on shares and on what nodes need. False: the matrix no longer is symmetric, or has become so. */
function share(net: CompiledNetwork, now: NetworkSpec): boolean {
  const { memory, laws, regions, whole, reduced } = net;
  const found = sharesOf(reduced, now);
  const { weight, symmetric } = weigh(net.tree, found);
  if (symmetric !== net.matrix.symmetric) return false;
  writeBalance(memory, regions, whole.row, reduced, found, weight);
  writeShares(memory, laws, found);
  writeGiven(now.links, whole.shares);
  now.links.forEach((link, e) => {
    if ((laws.place[e] ?? 0) >= laws.still) writeLaw(memory, laws, e, link);
  });
  return true;
}

/** Writes held pressures anew, and what leaves at nodes for the balance of the whole. */
function hold({ memory, whole }: CompiledNetwork, nodes: readonly NetworkNode[]): void {
  nodes.forEach(({ pressure, outflow = 0 }, v) => {
    whole.outflow[v] = outflow;
    if (pressure !== undefined) memory[(whole.row[v] ?? 0) + node.pressure] = pressure;
  });
}

/** `changed`: the same nodes, held where they were held, with other numbers. */
function nodesFrom(a: readonly NetworkNode[], b: readonly NetworkNode[]): 'same' | 'changed' | 'others' {
  if (a === b) return 'same';
  if (a.length !== b.length) return 'others';
  let same = true;
  for (let v = 0; v < b.length; v++) {
    const [was, now] = [a[v], b[v]];
    if (was === now || !was || !now) continue;
    if (was.id !== now.id || (was.pressure === undefined) !== (now.pressure === undefined)) return 'others';
    if (!Number.isFinite(now.pressure ?? 0) || !Number.isFinite(now.outflow ?? 0)) return 'others';
    same &&= was.pressure === now.pressure && was.outflow === now.outflow;
  }
  return same ? 'same' : 'changed';
}

const sameEnds = (a: NetworkLink, b: NetworkLink): boolean =>
  a.id === b.id && a.kind === b.kind && a.from === b.from && a.to === b.to;

const sameShares = (a: NetworkLink, b: NetworkLink): boolean =>
  (a.leave ?? 1) === (b.leave ?? 1) && (a.arrive ?? 1) === (b.arrive ?? 1);
