import { type Filled, type FillStock, fillRules, fillSheets } from './fill.ts';
import type { Flat } from './fronts.ts';

export type Runs = {
  /** The cheapest filling found; the fewest pieces missing come first. */
  readonly best: readonly Filled[];
  /** Every different sheet met on the way. */
  readonly met: readonly Filled[];
};

const shuffles = 60;
const metMost = 1500;

/** Orders in which people and papers pack: by area, by a side, by the girth. */
function ordersOf(pieces: readonly Flat[], copies: readonly number[]): number[][] {
  const by = (value: (p: Flat) => number): number[] =>
    [...copies].sort((a, b) => {
      const [p, q] = [pieces[a], pieces[b]];
      return p && q ? value(q) - value(p) || a - b : 0;
    });
  return [
    by((p) => p.w * p.h),
    by((p) => Math.max(p.w, p.h)),
    by((p) => Math.min(p.w, p.h)),
    by((p) => p.w + p.h),
    by((p) => p.w),
    by((p) => p.h),
  ];
}

/** Numbers from 0 to 1 that come out the same everywhere. */
function* spread(): Generator<number> {
  let x = 20_260;
  for (;;) {
    x = (x * 48_271) % 2_147_483_647;
    yield x / 2_147_483_647;
  }
}

/** The order with some neighbours let past each other. */
function shaken(order: readonly number[], next: () => number): number[] {
  const key = new Map(order.map((i, k) => [k, k + 6 * next() * (1 + (i % 2))] as const));
  return order
    .map((i, k) => [i, key.get(k) ?? k] as const)
    .sort((a, b) => a[1] - b[1])
    .map(([i]) => i);
}

/** Fills sheets by many simple rules and keeps the best: a start for the search, and patterns for its programme. */
export function manyRuns(
  pieces: readonly Flat[],
  copies: readonly number[],
  stock: readonly FillStock[],
  kerf: number,
  enough: number,
): Runs {
  const met = new Map<string, Filled>();
  let best: { cost: number; missing: number; sheets: readonly Filled[] } = {
    cost: Infinity,
    missing: Infinity,
    sheets: [],
  };
  let bestOrder: readonly number[] = copies;
  const run = (order: readonly number[], rule: (typeof fillRules)[number]): void => {
    const { sheets, missing } = fillSheets(pieces, order, stock, kerf, rule);
    for (const f of sheets) {
      const key = `${f.kind}:${f.set.join()}`;
      if (met.size < metMost && !met.has(key)) met.set(key, f);
    }
    const cost = sheets.reduce((sum, f) => sum + (stock[f.kind]?.cost ?? 0), 0);
    if (missing > best.missing || (missing === best.missing && cost >= best.cost)) return;
    best = { cost, missing, sheets };
    bestOrder = order;
  };
  const done = () => best.missing === 0 && best.cost <= enough + 1e-9;
  for (const order of ordersOf(pieces, copies)) for (const rule of fillRules) if (!done()) run(order, rule);
  const numbers = spread();
  const next = () => numbers.next().value ?? 0;
  for (let n = 0; n < shuffles && !done(); n++) {
    const order = shaken(bestOrder, next);
    for (const rule of fillRules) if (!done()) run(order, rule);
  }
  // What was chosen stays known even where the list of all is full.
  for (const f of best.sheets) met.set(`${f.kind}:${f.set.join()}`, f);
  return { best: best.sheets, met: [...met.values()] };
}
