import { indicesOf } from './columns.ts';
import type { NetworkSpec } from './spec.ts';

/** Links in series between two nodes where more than two meet, or that are held. */
export type Passage = {
  readonly from: number;
  readonly to: number;
  /** Its links one after the other, and whether each points the way that was walked. */
  readonly steps: readonly Step[];
  /** -1 where it was walked from `to`. */
  readonly way: 1 | -1;
};

type Step = { readonly link: number; readonly forward: boolean };

/** How to find the pressure of a node from one already known: `node` lies behind `link`, which leads from `known`. */
type Follow = { readonly node: number; readonly known: number; readonly link: number; readonly sign: number };

/** What is left of a network without dead ends and pieces in series. It hangs on what its links join alone, not on sizes. */
export type Reduced = {
  /** First those between two unknown pressures, then those from an unknown to a held one, then the rest. */
  readonly passages: readonly Passage[];
  /** Places in `passages` in the order in which they were walked. */
  readonly walked: Int32Array;
  /** Dead ends in the order in which they were taken out. */
  readonly ends: readonly Follow[];
  readonly follow: readonly Follow[];
  /** Nodes whose pressure is unknown and that are left. */
  readonly kept: readonly number[];
  readonly from: Int32Array;
  readonly to: Int32Array;
};

/**
 * Takes dead ends and pieces in series out of a network, exactly: their flows hang on one another by the balance of
 * air alone (`sharesOf`). Every free node must be joined to a held one, no link lead back to its own node.
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
      const passage = walk(work, v, e, follow);
      passages.push(passage);
      if (isThrough(work, passage.to)) kept.push(passage.to);
    }
  return { ...arrange(work, passages), ends, follow: [...follow, ...ends.toReversed()], kept, from, to };
}

function arrange({ free }: Work, passages: readonly Passage[]): Pick<Reduced, 'passages' | 'walked'> {
  const held = (v: number): number => 1 - (free[v] ?? 0);
  const turned = passages.map((p, i) => {
    const passage: Passage = held(p.from) > held(p.to) ? { ...p, from: p.to, to: p.from, way: -1 } : p;
    return { i, passage, rank: held(p.from) + held(p.to) };
  });
  turned.sort((a, b) => a.rank - b.rank || a.i - b.i);
  const walked = new Int32Array(passages.length);
  turned.forEach((x, now) => {
    walked[x.i] = now;
  });
  return { passages: turned.map((x) => x.passage), walked };
}

type Work = {
  readonly from: Int32Array;
  readonly to: Int32Array;
  readonly free: Int32Array;
  readonly degree: Int32Array;
  readonly done: Uint8Array;
  readonly touching: readonly number[][];
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
  const free = indicesOf(spec.nodes, (n) => (n.pressure === undefined ? 1 : 0));
  return { from, to, free, degree, done: new Uint8Array(spec.links.length), touching };
}

const isThrough = (w: Work, v: number): boolean => w.free[v] === 1 && w.degree[v] === 2;

/** Dead ends, each with the one link that leads to it. */
function peel(w: Work): Follow[] {
  const ends: Follow[] = [];
  const open = w.touching.flatMap((_, v) => (w.free[v] === 1 && w.degree[v] === 1 ? [v] : []));
  for (let v = open.pop(); v !== undefined; v = open.pop()) {
    const link = w.touching[v]?.find((e) => !w.done[e]);
    if (link === undefined) continue;
    const inward = w.to[link] === v;
    const known = (inward ? w.from[link] : w.to[link]) ?? 0;
    w.done[link] = 1;
    w.degree[v] = 0;
    w.degree[known] = (w.degree[known] ?? 0) - 1;
    if (w.free[known] === 1 && w.degree[known] === 1) open.push(known);
    ends.push({ node: v, known, link, sign: inward ? 1 : -1 });
  }
  return ends;
}

/** Follows a passage from its first link. */
function walk(w: Work, first: number, link: number, follow: Follow[]): Passage {
  const steps: Step[] = [];
  let [node, e] = [first, link];
  for (;;) {
    const forward = w.from[e] === node;
    w.done[e] = 1;
    steps.push({ link: e, forward });
    const next = (forward ? w.to[e] : w.from[e]) ?? 0;
    const onward = onwardFrom(w, next, first);
    if (onward === undefined) return { from: first, to: next, steps, way: 1 };
    follow.push({ node: next, known: node, link: e, sign: forward ? 1 : -1 });
    [node, e] = [next, onward];
  }
}

/** The next link of a passage. One that would close a ring on an unknown `first` ends at its last node instead. */
function onwardFrom(w: Work, v: number, first: number): number | undefined {
  const onward = isThrough(w, v) ? w.touching[v]?.find((x) => !w.done[x]) : undefined;
  if (onward === undefined || w.free[first] === 0) return onward;
  return w.from[onward] === first || w.to[onward] === first ? undefined : onward;
}
