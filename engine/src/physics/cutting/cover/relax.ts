import { addColumn, masterOf, solveMaster } from './master.kernel.ts';
import type { CoverSpec, Pattern } from './pattern.ts';

/** What is still to be cut from what is still there. */
export type Rest = { readonly wanted: Int32Array; readonly left: Float64Array };

/**
 * The rest as a linear programme over all patterns. `worth` and `rent` are prices at which no pattern earns more than its
 * stock costs: `bound` follows from them by one sum, whatever the simplex method did.
 */
export type Relaxed = {
  readonly bound: number;
  readonly worth: Float64Array;
  readonly rent: Float64Array;
  /** Pattern and how often the programme would cut it, the most used first. */
  readonly used: readonly { readonly pattern: Pattern; readonly times: number }[];
  /** No pattern is left that would lower the cost. */
  readonly settled: boolean;
};

const roundsMost = 600;
const stepsMost = 4000;
const entriesMost = 400_000;
const hair = 1e-8;

type Node = {
  readonly spec: CoverSpec;
  readonly rest: Rest;
  readonly stockRow: readonly number[];
  readonly leftOut: number;
};

/** Prices made safe: scaled so that no pattern earns more than its stock and its rent. */
function safePrices({ spec, rest, leftOut }: Node, prices: Float64Array, upper: readonly number[]) {
  let scale = 1;
  spec.kinds.forEach(({ cost }, k) => {
    if ((rest.left[k] ?? 0) === Infinity && (upper[k] ?? 0) > cost) scale = Math.min(scale, cost / (upper[k] ?? 1));
  });
  const worth = new Float64Array(rest.wanted.length);
  let bound = 0;
  rest.wanted.forEach((n, i) => {
    const p = Math.min(leftOut, Math.max(0, scale * (prices[i] ?? 0)));
    worth[i] = p;
    bound += p * n;
  });
  const rent = new Float64Array(spec.kinds.length);
  spec.kinds.forEach(({ cost }, k) => {
    const left = rest.left[k] ?? 0;
    if (left === Infinity || left === 0) return;
    const r = Math.max(0, scale * (upper[k] ?? 0) - cost);
    rent[k] = r;
    bound -= r * left;
  });
  return { bound, worth, rent, scale };
}

/** Lower bound of the rest by generating columns; stops early where the bound already reaches `enough`. */
export function relax(spec: CoverSpec, pool: Pattern[], rest: Rest, leftOut: number, enough: number): Relaxed {
  const pieces = rest.wanted.length;
  const limited = spec.kinds.flatMap((_, k) => ((rest.left[k] ?? 0) < Infinity ? [k] : []));
  const stockRow = spec.kinds.map((_, k) => (limited.includes(k) ? pieces + limited.indexOf(k) : -1));
  const node: Node = { spec, rest, stockRow, leftOut };
  const room = { columns: pool.length + 20_000, entries: entriesMost };
  const m = masterOf(
    rest.wanted,
    Float64Array.from(limited, (k) => rest.left[k] ?? 0),
    leftOut,
    room,
  );
  const columns: Pattern[] = [];
  const add = (p: Pattern): boolean => {
    const kind = spec.kinds[p.kind];
    if (!kind || (rest.left[p.kind] ?? 0) === 0) return false;
    const added = addColumn(m, kind.cost, p.counts, rest.wanted, stockRow[p.kind] ?? -1);
    if (added) columns.push(p);
    return added;
  };
  for (const p of pool) add(p);
  let best = safePrices(node, new Float64Array(pieces), []);
  let settled = false;
  for (let round = 0; round < roundsMost; round++) {
    solveMaster(m, stepsMost);
    const asking = { prices: m.prices.slice(0, pieces), wanted: rest.wanted };
    let grew = false;
    const upper = spec.kinds.map(({ cost }, k) => {
      if ((rest.left[k] ?? 0) === 0) return 0;
      const rent = Math.max(0, -(m.prices[stockRow[k] ?? -1] ?? 0));
      const answer = spec.oracle.best(k, asking, cost + rent + hair);
      for (const p of answer.patterns) {
        pool.push(p);
        grew = add(p) || grew;
      }
      return answer.upper;
    });
    const safe = safePrices(node, asking.prices, upper);
    if (safe.bound > best.bound) best = safe;
    // Where the oracle stopped short, its prices had to be scaled down: then more is open than it told.
    settled = !grew && safe.scale > 1 - 1e-6;
    if (!grew) break;
    if (best.bound >= enough) break;
  }
  const used = [...m.basis]
    .flatMap((c, i) => {
      const pattern = columns[c - pieces];
      return pattern && (m.x[i] ?? 0) > 1e-5 ? [{ pattern, times: m.x[i] ?? 0 }] : [];
    })
    .sort((a, b) => b.times - a.times);
  return { ...best, used, settled };
}
