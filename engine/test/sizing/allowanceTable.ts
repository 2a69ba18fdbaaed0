import type { SizingSpec } from '../../src/air/sizing/spec.ts';

/**
 * Least whole cost by a table over allowances in whole pascals, for systems whose losses are whole pascals: what hangs
 * at a place costs, with `a` pascals left, the sum over its branches of their cheapest option plus what hangs beyond
 * with what is left then. Large systems in good time, without any front.
 */
export function allowanceTable(spec: SizingSpec): number {
  const { sections, budget } = spec;
  const seen = new Map<string, number>();
  const cost = (o: { money: number; labour: number }) =>
    spec.goal === 'labour' ? Math.round(o.labour) : Math.round(o.money * 100);
  const branch = (i: number, left: number): number => {
    const key = `${i} ${left}`;
    const known = seen.get(key);
    if (known !== undefined) return known;
    const s = sections[i];
    let least = Number.POSITIVE_INFINITY;
    for (const o of s?.options ?? []) {
      if (!s?.fixed && (o.breaks ?? []).length > 0) continue;
      const rest = left - o.loss;
      if (rest < (s?.end ?? 0)) continue;
      const beyond = sections.reduce((a, x, j) => a + (x.from === s?.id ? branch(j, rest) : 0), 0);
      least = Math.min(least, cost(o) + beyond);
    }
    seen.set(key, least);
    return least;
  };
  const side = (name: 'supply' | 'return', left: number) =>
    sections.reduce((a, s, i) => a + (s.side === name && s.from === undefined ? branch(i, left) : 0), 0);
  let best = Number.POSITIVE_INFINITY;
  for (let a = 0; a <= budget; a++) best = Math.min(best, side('supply', a) + side('return', budget - a));
  return best;
}
