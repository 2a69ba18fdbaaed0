import { type Asking, type Cover, type CoverSpec, keyOf, type Pattern } from './pattern.ts';
import { type Relaxed, type Rest, relax } from './relax.ts';

const hair = 1e-6;

/** Costs are whole steps of this; a bound may be rounded up to the next one. */
function stepOf(spec: CoverSpec): number {
  const scaled = spec.kinds.map(({ cost }) => Math.round(cost * 1e4));
  let all = 0;
  for (const x of scaled) {
    let [a, b] = [all, x];
    while (b > 0) [a, b] = [b, a % b];
    all = a;
  }
  // Costs finer than a hundredth of a cent are not rounded.
  const whole = spec.kinds.every(({ cost }, i) => Math.abs(cost * 1e4 - (scaled[i] ?? 0)) < 1e-6);
  return whole && all > 0 ? all / 1e4 : 0;
}

type Search = {
  readonly spec: CoverSpec;
  readonly step: number;
  readonly leftOut: number;
  readonly pool: Pattern[];
  best: { cost: number; chosen: readonly Pattern[] };
  bound: number;
  nodes: number;
  /** The search has left something out. */
  cut: boolean;
};

const up = (s: Search, cost: number): number => (s.step > 0 ? s.step * Math.ceil(cost / s.step - hair) : cost - hair);

function offer(s: Search, chosen: readonly Pattern[], missing: number): void {
  const cost = missing * s.leftOut + chosen.reduce((sum, p) => sum + (s.spec.kinds[p.kind]?.cost ?? 0), 0);
  if (cost < s.best.cost - hair) s.best = { cost, chosen };
}

const sumOf = (x: Int32Array): number => x.reduce((a, b) => a + b, 0);

/** What is left after cutting that pattern so many times. */
function after(rest: Rest, pattern: Pattern, times: number): Rest {
  const wanted = rest.wanted.map((n, i) => Math.max(0, n - times * (pattern.counts[i] ?? 0)));
  const left = rest.left.slice();
  left[pattern.kind] = (left[pattern.kind] ?? 0) - times;
  return { wanted, left };
}

type Child = { readonly pattern: Pattern; readonly loss: number; readonly times: number };

/** Ways to cut the hardest piece that is left which can still lead below the best, the most promising first. */
function childrenOf(s: Search, rest: Rest, r: Relaxed, piece: number, gap: number): Child[] {
  const asking: Asking = { prices: r.worth, wanted: rest.wanted };
  const times = new Map(r.used.map((u) => [keyOf(u.pattern), u.times]));
  return s.spec.kinds
    .flatMap(({ cost }, k): Child[] => {
      if ((rest.left[k] ?? 0) === 0) return [];
      const price = cost + (r.rent[k] ?? 0);
      const { patterns, whole } = s.spec.oracle.all(k, piece, asking, price - gap - hair);
      if (!whole) s.cut = true;
      return patterns.map((pattern) => ({
        pattern,
        loss: price - pattern.counts.reduce((sum, n, i) => sum + n * (r.worth[i] ?? 0), 0),
        times: times.get(keyOf(pattern)) ?? 0,
      }));
    })
    .sort((a, b) => b.times - a.times || a.loss - b.loss);
}

/** One way down: cuts what the programme cuts most, then what it cuts next; `turns` ways off from that in all. */
function dive(s: Search, rest: Rest, chosen: readonly Pattern[], paid: number, turns: number): void {
  if (s.best.cost <= s.bound + hair) return;
  const missing = sumOf(rest.wanted);
  if (missing === 0) {
    offer(s, chosen, 0);
    return;
  }
  if (s.nodes++ >= s.spec.nodesMost) return;
  const r = relax(s.spec, s.pool, rest, s.leftOut, s.best.cost - s.step + hair - paid);
  if (up(s, paid + r.bound) >= s.best.cost - hair) return;
  if (r.used.length === 0) {
    offer(s, chosen, missing);
    return;
  }
  for (const [k, { pattern, times }] of r.used.slice(0, turns + 1).entries()) {
    const n = Math.max(1, Math.floor(times + hair));
    const cost = n * (s.spec.kinds[pattern.kind]?.cost ?? 0);
    const next = [...chosen, ...Array.from({ length: n }, () => pattern)];
    dive(s, after(rest, pattern, n), next, paid + cost, turns - k);
  }
}

/** Goes through everything that may still win: the hardest piece that is left is in some pattern. */
function search(s: Search, rest: Rest, chosen: readonly Pattern[], paid: number): void {
  if (s.best.cost <= s.bound + hair) return;
  if (sumOf(rest.wanted) === 0) {
    offer(s, chosen, 0);
    return;
  }
  if (s.nodes++ >= s.spec.nodesMost) {
    s.cut = true;
    return;
  }
  const r = relax(s.spec, s.pool, rest, s.leftOut, s.best.cost - s.step + hair - paid);
  if (up(s, paid + r.bound) >= s.best.cost - hair) return;
  const piece = s.spec.hardest.find((i) => (rest.wanted[i] ?? 0) > 0) ?? 0;
  const children = childrenOf(s, rest, r, piece, s.best.cost - s.step - paid - r.bound);
  if (children.length === 0) offer(s, chosen, sumOf(rest.wanted));
  for (const { pattern, loss } of children) {
    if (loss > s.best.cost - s.step - paid - r.bound + hair) continue;
    const cost = s.spec.kinds[pattern.kind]?.cost ?? 0;
    search(s, after(rest, pattern, 1), [...chosen, pattern], paid + cost);
  }
  if (rest.left.every((n) => n < Infinity) && paid + s.leftOut < s.best.cost - hair) {
    const wanted = rest.wanted.slice();
    wanted[piece] = (wanted[piece] ?? 0) - 1;
    search(s, { wanted, left: rest.left }, chosen, paid + s.leftOut);
  }
}

/** Pieces which the chosen patterns do not give. */
function missingOf(spec: CoverSpec, chosen: readonly Pattern[]): Int32Array {
  return spec.demand.map((n, i) => Math.max(0, n - chosen.reduce((sum, p) => sum + (p.counts[i] ?? 0), 0)));
}

/**
 * The least cost of stock from which all pieces are cut. Bound: the linear programme over all patterns, whose prices are
 * made safe before they are used. Search: down along the programme's own choice, then with few departures; then all patterns
 * with the hardest piece that may still win, one by one. Counts end it, not seconds; where one did, `proved` is false
 * unless the bound is met. Source: `cutting.cover`.
 */
export function cover(spec: CoverSpec): Cover {
  const step = stepOf(spec);
  const pieces = sumOf(spec.demand);
  const dearest = Math.max(step, 1e-4, ...spec.kinds.map((k) => k.cost));
  const leftOut = (step || 1e-4) * Math.ceil(((pieces + 1) * dearest) / (step || 1e-4));
  const rest: Rest = { wanted: spec.demand, left: Float64Array.from(spec.kinds, (k) => k.count) };
  const s: Search = {
    spec,
    step,
    leftOut,
    pool: [...spec.pool],
    best: { cost: pieces * leftOut, chosen: [] },
    bound: 0,
    nodes: 0,
    cut: false,
  };
  s.bound = Math.max(0, up(s, spec.bound));
  if (spec.start) offer(s, spec.start, sumOf(missingOf(spec, spec.start)));
  let linear: number | undefined;
  if (s.best.cost > s.bound + hair || spec.linearToo) {
    const root = relax(spec, s.pool, rest, leftOut, Infinity);
    if (root.settled) linear = root.bound;
    s.bound = Math.max(s.bound, up(s, root.bound));
    for (const turns of [0, 2]) dive(s, rest, [], 0, turns);
    if (root.settled) search(s, rest, [], 0);
    else s.cut = true;
  }
  const proved = s.best.cost <= s.bound + hair || !s.cut;
  return {
    chosen: s.best.chosen,
    leftOut: missingOf(spec, s.best.chosen),
    cost: s.best.cost,
    bound: proved ? s.best.cost : s.bound,
    linear,
    proved,
    nodes: s.nodes,
  };
}
