import { compileFan, type FanCurve } from './fanCurve.ts';
import type { NetworkLink, NetworkSpec } from './spec.ts';

export const DUCT = 0;
export const POWER = 1;
export const FAN = 2;

/** A network laid out once in flat arrays, with the scratch of its solver. */
export type CompiledNetwork = {
  readonly nodes: number;
  readonly links: number;
  /** Row of each node in the linear system, -1 where its pressure is held. */
  readonly row: Int32Array;
  readonly unknowns: number;
  readonly held: Float64Array;
  readonly outflow: Float64Array;
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly kind: Uint8Array;
  /** DUCT: Re = a·q, friction drop = b·f·q², minor loss = c·q², relative roughness d. POWER: coefficient a, exponent b. */
  readonly a: Float64Array;
  readonly b: Float64Array;
  readonly c: Float64Array;
  readonly d: Float64Array;
  readonly fans: readonly (FanCurve | undefined)[];
  readonly leave: Float64Array;
  readonly arrive: Float64Array;
  readonly nodeIds: readonly string[];
  readonly linkIds: readonly string[];
  readonly scratch: {
    readonly matrix: Float64Array;
    readonly right: Float64Array;
    readonly drop: Float64Array;
    readonly slope: Float64Array;
    readonly trial: Float64Array;
  };
};

/** Lays a network out. A link that names a node which is not there is our own fault and throws. */
export function compileNetwork(spec: NetworkSpec): CompiledNetwork {
  const n = spec.nodes.length;
  const m = spec.links.length;
  const index = new Map(spec.nodes.map((node, i) => [node.id, i]));
  const place = (id: string): number => {
    const i = index.get(id);
    if (i === undefined) throw new Error(`assert: a link names the node ${id}, which is not there`);
    return i;
  };
  let unknowns = 0;
  const row = Int32Array.from(spec.nodes, (node) => (node.pressure === undefined ? unknowns++ : -1));
  const net: CompiledNetwork = {
    nodes: n,
    links: m,
    row,
    unknowns,
    held: Float64Array.from(spec.nodes, (node) => node.pressure ?? 0),
    outflow: Float64Array.from(spec.nodes, (node) => node.outflow ?? 0),
    from: Int32Array.from(spec.links, (l) => place(l.from)),
    to: Int32Array.from(spec.links, (l) => place(l.to)),
    kind: Uint8Array.from(spec.links, (l) => (l.kind === 'duct' ? DUCT : l.kind === 'power' ? POWER : FAN)),
    a: new Float64Array(m),
    b: new Float64Array(m),
    c: new Float64Array(m),
    d: new Float64Array(m),
    fans: spec.links.map((l) => (l.kind === 'fan' ? compileFan(l.points) : undefined)),
    leave: Float64Array.from(spec.links, (l) => l.leave ?? 1),
    arrive: Float64Array.from(spec.links, (l) => l.arrive ?? 1),
    nodeIds: spec.nodes.map((node) => node.id),
    linkIds: spec.links.map((l) => l.id),
    scratch: {
      matrix: new Float64Array(unknowns * unknowns),
      right: new Float64Array(unknowns),
      drop: new Float64Array(m),
      slope: new Float64Array(m),
      trial: new Float64Array(m),
    },
  };
  spec.links.forEach((link, i) => {
    layOut(net, link, i);
  });
  return net;
}

function layOut(net: CompiledNetwork, link: NetworkLink, i: number): void {
  if (link.kind === 'power') {
    net.a[i] = link.coefficient;
    net.b[i] = link.exponent;
  } else if (link.kind === 'duct') {
    net.a[i] = (link.density * link.diameter) / (link.area * link.viscosity);
    net.b[i] = ((link.factor ?? 1) * link.length * link.density) / (2 * link.diameter * link.area ** 2);
    net.c[i] = ((link.loss ?? 0) * link.density) / (2 * link.area ** 2);
    net.d[i] = link.roughness / link.diameter;
  }
}
