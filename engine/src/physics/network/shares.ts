import { numbersOf } from './columns.ts';
import type { Passage, Reduced } from './passages.ts';
import type { NetworkSpec } from './spec.ts';

/** How flows of a reduced network hang on one another: all of it follows from what leaves and arrives of each link. */
export type Shares = {
  /** m³/s that each node still has to get once dead ends and series pieces are taken out. */
  readonly need: Float64Array;
  /** By passage: share of its flow that `from` gives and `to` gets. */
  readonly leave: Float64Array;
  readonly arrive: Float64Array;
  /**
   * By link: flow = share · (flow in its passage) + fixed, sign +1 where it points along; passage -1: the flow is fixed
   * by what leaves at dead ends.
   */
  readonly passage: Int32Array;
  readonly share: Float64Array;
  readonly fixed: Float64Array;
  readonly sign: Int32Array;
};

/** What leaves and arrives of each link. */
type Given = { readonly leave: Float64Array; readonly arrive: Float64Array };

/** Every share of a link must lie above 0. */
export function sharesOf(reduced: Reduced, { nodes, links }: NetworkSpec): Shares {
  const given: Given = { leave: numbersOf(links, (l) => l.leave ?? 1), arrive: numbersOf(links, (l) => l.arrive ?? 1) };
  const { passages, walked } = reduced;
  const found: Shares = {
    need: numbersOf(nodes, (n) => n.outflow ?? 0),
    leave: new Float64Array(passages.length),
    arrive: new Float64Array(passages.length),
    passage: new Int32Array(links.length).fill(-1),
    share: new Float64Array(links.length),
    fixed: new Float64Array(links.length),
    sign: new Int32Array(links.length).fill(1),
  };
  deadEnds(reduced, given, found);
  for (const p of walked) along(passages[p] as Passage, p, reduced, given, found);
  return found;
}

/** The one link of a dead end carries what is needed there. */
function deadEnds({ ends }: Reduced, { leave, arrive }: Given, { need, fixed }: Shares): void {
  for (const { node, known, link, sign } of ends) {
    const [given, got] = [leave[link] ?? 1, arrive[link] ?? 1];
    const wanted = need[node] ?? 0;
    const flow = sign > 0 ? wanted / got : -wanted / given;
    need[known] = (need[known] ?? 0) + (sign > 0 ? given * flow : -got * flow);
    fixed[link] = flow;
  }
}

/** The flow of a passage is that of its first link, counted the way it was walked. */
function along({ steps, way }: Passage, p: number, { from, to }: Reduced, given: Given, found: Shares): void {
  const { leave, arrive } = given;
  const { need } = found;
  let [flow, constant, node, first] = [0, 0, -1, 1];
  for (const { link, forward } of steps) {
    const gives = (forward ? leave[link] : -(arrive[link] ?? 1)) ?? 1;
    const gets = (forward ? arrive[link] : -(leave[link] ?? 1)) ?? 1;
    const begins = node < 0;
    if (begins) first = Math.abs(gives);
    const share = begins ? Math.sign(gives) : flow / gives;
    const fixed = begins ? 0 : (constant - (need[node] ?? 0)) / gives;
    found.passage[link] = p;
    found.share[link] = share * way;
    found.fixed[link] = fixed;
    found.sign[link] = forward ? way : -way;
    flow = gets * share;
    constant = gets * fixed;
    node = (forward ? to[link] : from[link]) ?? 0;
  }
  need[node] = (need[node] ?? 0) - constant;
  found.leave[p] = way > 0 ? first : flow;
  found.arrive[p] = way > 0 ? flow : first;
}
