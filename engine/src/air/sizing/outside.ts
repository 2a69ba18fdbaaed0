import type { CompiledSizing } from './compile.ts';
import { addNeighbours, cheapestPair } from './front.kernel.ts';
import { added, cutTo, type Front, frontArrays, sizeOf } from './front.ts';
import { leastOption } from './least.ts';
import type { Fronts } from './upward.ts';

/**
 * Least cost of the whole system within the budget with each option of each section forced and all else free, by
 * section and option; Infinity where it does not fit or breaks a limit. From the air handler outward: the front of
 * everything outside a branch, (pressure used outside, cost), is made like the branch's own.
 */
export function forcedCosts(c: CompiledSizing, f: Fronts): number[][] {
  const forced: number[][] = c.sections.map(() => []);
  const outside: (Front | undefined)[] = c.sections.map(() => undefined);
  const start = (i: number): [Front, Front] =>
    c.sections[i]?.side === 'supply' ? [f.return, f.supply] : [f.supply, f.return];
  for (const i of c.order) {
    const p = c.parent[i] ?? -1;
    const [around, junction] = p < 0 ? start(i) : [outside[p], f.below[p]];
    const [own, below, options] = [f.own[i], f.below[i], c.options[i]];
    if (!around || !junction || !own || !below || !options) continue;
    const rest = withNeighbours(around, junction, own, c.budget);
    forced[i] = (c.cost[i] ?? []).map((cost, k) =>
      c.usable[i]?.includes(k)
        ? cost + cheapestPair(rest, below, c.budget - (c.loss[i]?.[k] ?? 0))
        : Number.POSITIVE_INFINITY,
    );
    if ((c.children[i] ?? []).length > 0) outside[i] = added(options, rest, c.budget - leastBelow(c, i, below));
  }
  return forced;
}

const leastBelow = (c: CompiledSizing, i: number, below: Front): number =>
  sizeOf(below) > 0 ? (below.loss[0] ?? 0) : leastOption(c, i);

function withNeighbours(around: Front, junction: Front, own: Front, budget: number): Front {
  const out = frontArrays(sizeOf(around));
  return cutTo(out, addNeighbours(around, junction, own, budget, out));
}
