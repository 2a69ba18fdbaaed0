import { indicesOf, numbersOf } from './columns.ts';
import type { NetworkSpec } from './spec.ts';

/** Flow in a link = share · (flow in its passage) + fixed; passage -1: the flow is fixed by what leaves at dead ends. */
export type LinkPlace = {
  readonly passage: number;
  readonly share: number;
  readonly fixed: number;
  /** +1 where the link points along its passage. */
  readonly sign: number;
};

/** Links in series between two nodes where more than two meet, or that are held. */
export type Passage = {
  readonly from: number;
  readonly to: number;
  /** Share of the passage's flow that `from` gives and `to` gets. */
  readonly leave: number;
  readonly arrive: number;
};

/** How to find the pressure of a node from one already known: `node` lies behind `link`, which leads from `known`. */
type Follow = { readonly node: number; readonly known: number; readonly link: number; readonly sign: number };

export type Reduced = {
  readonly places: readonly LinkPlace[];
  /** First those between two unknown pressures, then those from an unknown to a held one, then the rest. */
  readonly passages: readonly Passage[];
  readonly follow: readonly Follow[];
  /** m³/s that each node still has to get once dead ends and series pieces are taken out. */
  readonly need: Float64Array;
  /** Nodes whose pressure is unknown and that are left. */
  readonly kept: readonly number[];
};

/**
 * Takes dead ends and pieces in series out of a network, exactly: their flows hang on one another by the balance of
 * air alone. Every free node must be joined to a held one, every share lie above 0, no link lead back to its own node.
 */
export function reduce(spec: NetworkSpec, from: Int32Array, to: Int32Array): Reduced {
  const work = begin(spec, from, to);
  const ends = peel(work);
  const passages: Passage[] = [];
  const follow: Follow[] = [];
  const left = spec.nodes.map((_, v) => v).filter((v) => (work.degree[v] ?? 0) > 0 && !isThrough(work, v));
  const kept = left.filter((v) => work.free[v] === 1);
  for (const v of left)
    for (const e of work.touching[v] ?? []) {
      if (work.done[e]) continue;
      const passage = walk(work, v, e, passages.length, follow);
      passages.push(passage);
      if (isThrough(work, passage.to)) kept.push(passage.to);
    }
  return { ...arrange(work, passages), follow: [...follow, ...ends.reverse()], need: work.need, kept };
}

function arrange(w: Work, passages: readonly Passage[]): Pick<Reduced, 'passages' | 'places'> {
  const held = (v: number): number => 1 - (w.free[v] ?? 0);
  const turned = passages.map((p, i) => {
    const turn = held(p.from) > held(p.to);
    const passage = turn ? { from: p.to, to: p.from, leave: p.arrive, arrive: p.leave } : p;
    return { i, turn, passage, rank: held(p.from) + held(p.to) };
  });
  const sorted = [...turned].sort((a, b) => a.rank - b.rank || a.i - b.i);
  const number = new Int32Array(passages.length);
  sorted.forEach((x, now) => {
    number[x.i] = now;
  });
  const places = w.places.map(({ passage, share, fixed, sign }) => {
    const way = turned[passage]?.turn ? -1 : 1;
    return { passage: number[passage] ?? -1, share: share * way, fixed, sign: sign * way };
  });
  return { passages: sorted.map((x) => x.passage), places };
}

type Work = {
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly leave: Float64Array;
  readonly arrive: Float64Array;
  readonly free: Int32Array;
  readonly degree: Int32Array;
  readonly need: Float64Array;
  readonly done: Uint8Array;
  readonly touching: readonly number[][];
  readonly places: LinkPlace[];
};

function begin(spec: NetworkSpec, from: Int32Array, to: Int32Array): Work {
  const touching = spec.nodes.map((): number[] => []);
  const degree = new Int32Array(spec.nodes.length);
  spec.links.forEach((_, e) => {
    for (const v of [from[e] ?? 0, to[e] ?? 0]) {
      degree[v] = (degree[v] ?? 0) + 1;
      touching[v]?.push(e);
    }
  });
  return {
    from,
    to,
    leave: numbersOf(spec.links, (l) => l.leave ?? 1),
    arrive: numbersOf(spec.links, (l) => l.arrive ?? 1),
    free: indicesOf(spec.nodes, (n) => (n.pressure === undefined ? 1 : 0)),
    degree,
    need: numbersOf(spec.nodes, (n) => n.outflow ?? 0),
    done: new Uint8Array(spec.links.length),
    touching,
    places: spec.links.map(() => ({ passage: -1, share: 0, fixed: 0, sign: 1 })),
  };
}

const isThrough = (w: Work, v: number): boolean => w.free[v] === 1 && w.degree[v] === 2;

/** Dead ends: their one link carries what they need. Gives the way back to their pressures, outermost first. */
function peel(w: Work): Follow[] {
  const ends: Follow[] = [];
  const open = w.touching.flatMap((_, v) => (w.free[v] === 1 && w.degree[v] === 1 ? [v] : []));
  for (let v = open.pop(); v !== undefined; v = open.pop()) {
    const link = w.touching[v]?.find((e) => !w.done[e]);
    if (link === undefined) continue;
    const inward = w.to[link] === v;
    const need = w.need[v] ?? 0;
    const flow = inward ? need / (w.arrive[link] ?? 1) : -need / (w.leave[link] ?? 1);
    const known = (inward ? w.from[link] : w.to[link]) ?? 0;
    w.need[known] = (w.need[known] ?? 0) + (inward ? (w.leave[link] ?? 1) * flow : -(w.arrive[link] ?? 1) * flow);
    w.places[link] = { passage: -1, share: 0, fixed: flow, sign: 1 };
    w.done[link] = 1;
    w.degree[v] = 0;
    w.degree[known] = (w.degree[known] ?? 0) - 1;
    if (w.free[known] === 1 && w.degree[known] === 1) open.push(known);
    ends.push({ node: v, known, link, sign: inward ? 1 : -1 });
  }
  return ends;
}

/** Follows a passage from its first link; its flow is that of the first link, counted away from `first`. */
function walk(w: Work, first: number, link: number, passage: number, follow: Follow[]): Passage {
  let e = link;
  let node = first;
  let forward = w.from[e] === node;
  let [share, fixed] = [forward ? 1 : -1, 0];
  const leave = (forward ? w.leave[e] : w.arrive[e]) ?? 1;
  for (;;) {
    w.done[e] = 1;
    w.places[e] = { passage, share, fixed, sign: forward ? 1 : -1 };
    const next = (forward ? w.to[e] : w.from[e]) ?? 0;
    const gets = (forward ? w.arrive[e] : -(w.leave[e] ?? 1)) ?? 1;
    const [flow, constant] = [gets * share, gets * fixed];
    const onward = onwardFrom(w, next, first);
    if (onward === undefined) {
      w.need[next] = (w.need[next] ?? 0) - constant;
      return { from: first, to: next, leave, arrive: flow };
    }
    follow.push({ node: next, known: node, link: e, sign: forward ? 1 : -1 });
    forward = w.from[onward] === next;
    const given = (forward ? w.leave[onward] : -(w.arrive[onward] ?? 1)) ?? 1;
    share = flow / given;
    fixed = (constant - (w.need[next] ?? 0)) / given;
    node = next;
    e = onward;
  }
}

/** The next link of a passage. One that would close a ring on an unknown `first` ends at its last node instead. */
function onwardFrom(w: Work, v: number, first: number): number | undefined {
  const onward = isThrough(w, v) ? w.touching[v]?.find((x) => !w.done[x]) : undefined;
  if (onward === undefined || w.free[first] === 0) return onward;
  return w.from[onward] === first || w.to[onward] === first ? undefined : onward;
}
