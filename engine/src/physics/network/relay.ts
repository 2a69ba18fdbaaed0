import { type CompiledNetwork, compileNetwork } from './compile.ts';
import { changeLaw } from './laws.ts';
import { linkProblems, type NetworkProblem } from './problems.ts';
import type { NetworkLink, NetworkNode, NetworkSpec } from './spec.ts';

/**
 * The lay-out of `before` made to serve `now`: where nodes and ends of links are the same, only the laws of links that
 * are other objects than before are written anew, in place; where more differs, or anything is wrong, all is laid out
 * again. What is solved with it is the same to the bit either way.
 */
export function relay(net: CompiledNetwork, before: NetworkSpec, now: NetworkSpec): CompiledNetwork {
  if (net.problems.length > 0 || !sameNodes(before.nodes, now.nodes) || before.links.length !== now.links.length)
    return compileNetwork(now);
  const wrong: NetworkProblem[] = [];
  for (let e = 0; e < now.links.length; e++) {
    const [was, link] = [before.links[e], now.links[e]];
    if (was === undefined || link === undefined || was === link) continue;
    linkProblems(link, wrong);
    if (wrong.length > 0 || !sameEnds(was, link)) return compileNetwork(now);
    changeLaw(net.laws, e, link);
  }
  return net;
}

const sameNodes = (a: readonly NetworkNode[], b: readonly NetworkNode[]): boolean =>
  a === b ||
  (a.length === b.length &&
    a.every((n, i) => n.id === b[i]?.id && n.pressure === b[i]?.pressure && n.outflow === b[i]?.outflow));

const sameEnds = (a: NetworkLink, b: NetworkLink): boolean =>
  a.id === b.id &&
  a.kind === b.kind &&
  a.from === b.from &&
  a.to === b.to &&
  (a.leave ?? 1) === (b.leave ?? 1) &&
  (a.arrive ?? 1) === (b.arrive ?? 1);
