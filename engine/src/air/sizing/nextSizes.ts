import { type CompiledSizing, costShown, perPascal } from './compile.ts';
import type { NextSize } from './spec.ts';
import { pressureOf } from './totals.ts';

/**
 * For every section that may still change, the cheapest usable option that loses less than the one chosen: what it
 * gains and costs alone, and, from `forced`, what the best system with it would cost more.
 */
export function nextSizes(
  c: CompiledSizing,
  choice: readonly number[],
  forced: readonly (readonly number[])[],
): NextSize[] {
  const now = pressureOf(c, choice);
  const best = c.sections.reduce((a, _, i) => a + (c.cost[i]?.[choice[i] ?? 0] ?? 0), 0);
  return c.sections.flatMap((s, i) => {
    const chosen = choice[i] ?? 0;
    const [loss, cost] = [c.loss[i] ?? [], c.cost[i] ?? []];
    const better = (c.usable[i] ?? []).filter((k) => (loss[k] ?? 0) < (loss[chosen] ?? 0));
    const [next] = better.sort((a, b) => (cost[a] ?? 0) - (cost[b] ?? 0) || (loss[a] ?? 0) - (loss[b] ?? 0) || a - b);
    const [from, to] = [s.options[chosen], s.options[next ?? -1]];
    if (next === undefined || !from || !to || s.fixed) return [];
    const then = pressureOf(
      c,
      choice.map((k, j) => (j === i ? next : k)),
    );
    const whole = forced[i]?.[next] ?? Number.POSITIVE_INFINITY;
    return [
      {
        section: s.id,
        option: to.id,
        gainOwn: ((loss[chosen] ?? 0) - (loss[next] ?? 0)) / perPascal,
        gainSystem: (now - then) / perPascal,
        money: (Math.round(to.money * 100) - Math.round(from.money * 100)) / 100,
        labour: Math.round(to.labour) - Math.round(from.labour),
        ...(whole < Number.POSITIVE_INFINITY ? { extraBest: costShown(whole - best, c.spec.goal) } : {}),
      },
    ];
  });
}
