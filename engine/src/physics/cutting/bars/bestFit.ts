import type { Pattern, StockKind } from '../cover/pattern.ts';

/**
 * A first plan: each piece, the longest first, into the bar where it leaves least; else a new one of the stock that is
 * cheapest for its length. Whole lengths with the kerf added; `pieces` from the longest on.
 */
export function bestFit(
  pieces: readonly number[],
  demand: readonly number[],
  stock: readonly number[],
  kinds: readonly StockKind[],
): Pattern[] {
  const bars: { pattern: Pattern; left: number }[] = [];
  const have = kinds.map((k) => k.count);
  const worth = (k: number) => (kinds[k]?.cost ?? 0) / (stock[k] ?? 1);
  const cheapest = stock.map((_, k) => k).sort((a, b) => worth(a) - worth(b) || a - b);
  pieces.forEach((size, i) => {
    for (let n = 0; n < (demand[i] ?? 0); n++) {
      let bar = bars.reduce<(typeof bars)[number] | undefined>(
        (best, b) => (b.left >= size && (!best || b.left < best.left) ? b : best),
        undefined,
      );
      if (!bar) {
        const kind = cheapest.find((k) => (have[k] ?? 0) >= 1 && (stock[k] ?? 0) >= size);
        if (kind === undefined) return;
        have[kind] = (have[kind] ?? 0) - 1;
        bar = { pattern: { kind, counts: new Int32Array(pieces.length) }, left: stock[kind] ?? 0 };
        bars.push(bar);
      }
      bar.left -= size;
      bar.pattern.counts[i] = (bar.pattern.counts[i] ?? 0) + 1;
    }
  });
  return bars.map((b) => b.pattern);
}

/** Least cost of stock with that much length in it, taken by cost per length; parts of a bar allowed. */
export function lengthBound(
  pieces: readonly number[],
  demand: readonly number[],
  stock: readonly number[],
  kinds: readonly StockKind[],
): number {
  const worth = (k: number) => (kinds[k]?.cost ?? 0) / (stock[k] ?? 1);
  let length = pieces.reduce((sum, x, i) => sum + x * (demand[i] ?? 0), 0);
  let cost = 0;
  for (const k of stock.map((_, i) => i).sort((a, b) => worth(a) - worth(b))) {
    const n = Math.min(kinds[k]?.count ?? 0, length / (stock[k] ?? 1));
    cost += n * (kinds[k]?.cost ?? 0);
    length -= n * (stock[k] ?? 0);
  }
  return cost * (1 - 1e-12);
}
