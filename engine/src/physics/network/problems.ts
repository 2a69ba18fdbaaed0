import type { NetworkLink, NetworkSpec } from './spec.ts';

/** What is wrong with a network and where. `several` still solves (see `fanPoints`), as does `idle`, to no flow at all. */
export type NetworkProblem = {
  readonly code:
    | 'node-unknown'
    | 'node-twice'
    | 'link-twice'
    | 'to-itself'
    | 'not-joined'
    | 'value'
    | 'no-resistance'
    | 'points-order'
    | 'several'
    | 'idle';
  readonly at: 'node' | 'link' | 'network';
  readonly id: string;
  /** The field and what it holds, where one is to blame. */
  readonly field?: string;
  readonly found?: number | string;
};

/** Whether a network with this problem has no solution to look for. */
export const stops = (p: NetworkProblem): boolean => p.code !== 'several' && p.code !== 'idle';

/**
 * Everything that keeps a network from having one answer: links to nodes that are not there, nodes not joined to a
 * held pressure, sizes that are not positive, a passage without resistance, a fan table out of order or rising, and a
 * network in which nothing drives the air. Never throws.
 */
export function networkProblems(spec: NetworkSpec): NetworkProblem[] {
  const problems: NetworkProblem[] = [];
  const nodes = new Map<string, number>();
  for (const { id, pressure = 0, outflow = 0 } of spec.nodes) {
    if (nodes.has(id)) problems.push({ code: 'node-twice', at: 'node', id });
    if (!nodes.has(id)) nodes.set(id, nodes.size);
    if (!Number.isFinite(pressure))
      problems.push({ code: 'value', at: 'node', id, field: 'pressure', found: pressure });
    if (!Number.isFinite(outflow)) problems.push({ code: 'value', at: 'node', id, field: 'outflow', found: outflow });
  }
  const links = new Set<string>();
  for (const l of spec.links) {
    const { id } = l;
    if (links.has(id)) problems.push({ code: 'link-twice', at: 'link', id });
    links.add(id);
    for (const end of ['from', 'to'] as const)
      if (!nodes.has(l[end])) problems.push({ code: 'node-unknown', at: 'link', id, field: end, found: l[end] });
    if (l.from === l.to) problems.push({ code: 'to-itself', at: 'link', id });
    linkProblems(l, problems);
  }
  notJoined(spec, nodes, problems);
  if (!problems.some(stops)) idle(spec, problems);
  return problems;
}

const positive = (x: number): boolean => x > 0 && x < Number.POSITIVE_INFINITY;
const notNegative = (x: number): boolean => x >= 0 && x < Number.POSITIVE_INFINITY;
const isShare = (x: number): boolean => x > 0 && x <= 1;
const isExponent = (x: number): boolean => x >= 1 && x <= 2;

/** A duct with nothing wrong with it, as nearly all are: told at once, since it is asked for thousands. */
const plainDuct = (l: Extract<NetworkLink, { readonly kind: 'duct' }>): boolean =>
  isShare(l.leave ?? 1) &&
  isShare(l.arrive ?? 1) &&
  positive(l.diameter) &&
  positive(l.area) &&
  positive(l.density) &&
  positive(l.viscosity) &&
  positive(l.length * (l.factor ?? 1)) &&
  notNegative(l.length) &&
  notNegative(l.factor ?? 1) &&
  notNegative(l.loss ?? 0) &&
  l.roughness >= 0 &&
  l.roughness < l.diameter &&
  l.turbulentFrom === undefined;

/** What is wrong with a link by itself, its ends aside. */
export function linkProblems(l: NetworkLink, problems: NetworkProblem[]): void {
  if (l.kind === 'duct' && plainDuct(l)) return;
  const { id } = l;
  let good = true;
  const need = (holds: boolean, field: string, found: number): void => {
    good &&= holds;
    if (!holds) problems.push({ code: 'value', at: 'link', id, field, found });
  };
  const { leave = 1, arrive = 1 } = l;
  need(isShare(leave), 'leave', leave);
  need(isShare(arrive), 'arrive', arrive);
  if (l.kind === 'duct') {
    const { factor = 1, loss = 0, turbulentFrom = 4000 } = l;
    need(positive(l.diameter), 'diameter', l.diameter);
    need(positive(l.area), 'area', l.area);
    need(positive(l.density), 'density', l.density);
    need(positive(l.viscosity), 'viscosity', l.viscosity);
    need(notNegative(l.length), 'length', l.length);
    need(l.roughness >= 0 && !(l.roughness >= l.diameter), 'roughness', l.roughness);
    need(notNegative(factor), 'factor', factor);
    need(notNegative(loss), 'loss', loss);
    need(turbulentFrom >= 2300 && positive(turbulentFrom), 'turbulentFrom', turbulentFrom);
    if (good && l.length * factor + loss === 0) problems.push({ code: 'no-resistance', at: 'link', id });
  } else if (l.kind === 'fan') fanProblems(id, l.points, problems);
  else {
    need(positive(l.coefficient), 'coefficient', l.coefficient);
    need(isExponent(l.exponent), 'exponent', l.exponent);
    if (l.kind === 'one-way') need(positive(l.leak), 'leak', l.leak);
  }
}

function fanProblems(
  id: string,
  points: readonly { readonly flow: number; readonly pressure: number }[],
  problems: NetworkProblem[],
): void {
  if (points.length < 2) problems.push({ code: 'value', at: 'link', id, field: 'points', found: points.length });
  points.forEach((p, i) => {
    const before = points[i - 1];
    const say = (code: NetworkProblem['code'], what: 'flow' | 'pressure'): void => {
      problems.push({ code, at: 'link', id, field: `points/${i}/${what}`, found: p[what] });
    };
    if (!Number.isFinite(p.flow)) say('value', 'flow');
    else if (!Number.isFinite(p.pressure)) say('value', 'pressure');
    else if (before !== undefined && p.flow <= before.flow) say('points-order', 'flow');
    else if (before !== undefined && p.pressure > before.pressure) say('several', 'pressure');
  });
}

/** Free nodes that no way leads from to a held pressure: theirs could be anything. */
function notJoined(spec: NetworkSpec, index: ReadonlyMap<string, number>, problems: NetworkProblem[]): void {
  // Nodes that belong together point to one of them, held ones to one beyond the last.
  const group = new Int32Array(index.size + 1).map((_, i) => i);
  const headOf = (v: number): number => {
    let head = v;
    while (group[head] !== head) {
      group[head] = group[group[head] ?? 0] ?? 0;
      head = group[head] ?? 0;
    }
    return head;
  };
  for (const n of spec.nodes) if (n.pressure !== undefined) group[headOf(index.get(n.id) ?? 0)] = headOf(index.size);
  for (const l of spec.links) {
    const [i, j] = [index.get(l.from), index.get(l.to)];
    if (i !== undefined && j !== undefined) group[headOf(i)] = headOf(j);
  }
  const joined = headOf(index.size);
  for (const { id } of spec.nodes)
    if (headOf(index.get(id) ?? 0) !== joined) problems.push({ code: 'not-joined', at: 'node', id });
}

/** Whether nothing drives the air. */
export function idle(spec: NetworkSpec, problems: NetworkProblem[]): void {
  const held = new Set(spec.nodes.flatMap((n) => (n.pressure === undefined ? [] : [n.pressure])));
  const driven =
    held.size > 1 || spec.nodes.some((n) => (n.outflow ?? 0) !== 0) || spec.links.some((l) => l.kind === 'fan');
  if (!driven && spec.links.length > 0) problems.push({ code: 'idle', at: 'network', id: '' });
}
