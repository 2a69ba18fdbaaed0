import type { Range } from '@kneewall/project';
import { type Cost, type CostOf, type ListLine, type Scope, scopes } from '../result.ts';

/** Money for what must be bought, whole and by part of the job, and for what is not ordered yet; what has no price is counted. */
export function costOf(lines: readonly ListLine[]): Cost {
  const all = lines.filter((l) => l.bought > 0);
  const of = (scope: Scope): CostOf =>
    summed(
      all.filter((l) => l.scope === scope),
      (l) => l.cost,
    );
  return {
    ...summed(all, (l) => l.cost),
    scopes: Object.fromEntries(scopes.map((s) => [s, of(s)])) as Record<Scope, CostOf>,
    open: summed(
      lines.filter((l) => l.open > 0),
      (l) => l.openCost,
    ),
  };
}

function summed(lines: readonly ListLine[], cost: (l: ListLine) => Range | undefined): CostOf {
  const known = lines.flatMap((l) => cost(l) ?? []);
  const sum = (at: 'low' | 'likely' | 'high') => known.reduce((a, c) => a + c[at], 0);
  return {
    low: sum('low'),
    likely: sum('likely'),
    high: sum('high'),
    priced: known.length,
    unpriced: lines.length - known.length,
  };
}
