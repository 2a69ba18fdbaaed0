import type { CompiledSizing } from './compile.ts';
import type { FrontArrays } from './front.kernel.ts';
import { added, costWithin, type Front, within } from './front.ts';
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
    const rest = withSiblings(around, junction, own, c.budget);
    forced[i] = (c.cost[i] ?? []).map((cost, k) =>
      c.usable[i]?.includes(k)
        ? cost + pairWithin(rest, below, c.budget - (c.loss[i]?.[k] ?? 0))
        : Number.POSITIVE_INFINITY,
    );
    if ((c.children[i] ?? []).length > 0) outside[i] = added(options, rest, c.budget - leastBelow(c, i, below));
  }
  return forced;
}

const leastBelow = (c: CompiledSizing, i: number, below: Front): number =>
  below.size > 0 ? (below.loss[0] ?? 0) : leastOption(c, i);

/** What is outside a branch, its neighbours at the same junction included: they share the pressure that is left there. */
function withSiblings(around: Front, junction: Front, own: Front, budget: number): Front {
  const n = around.size;
  const out: FrontArrays = { loss: new Float64Array(n), cost: new Float64Array(n), pick: new Int32Array(n) };
  let size = 0;
  let least = Number.POSITIVE_INFINITY;
  for (let m = 0; m < n; m++) {
    const used = around.loss[m] ?? 0;
    const all = costWithin(junction, budget - used);
    if (all === Number.POSITIVE_INFINITY) break;
    const cost = (around.cost[m] ?? 0) + all - costWithin(own, budget - used);
    if (cost >= least) continue;
    least = cost;
    out.loss[size] = used;
    out.cost[size] = cost;
    size++;
  }
  return { ...out, size };
}

/** Least sum of costs of a point of each front whose losses together keep within `allowed`. */
function pairWithin(a: Front, b: Front, allowed: number): number {
  const [short, long] = a.size < b.size ? [a, b] : [b, a];
  let least = Number.POSITIVE_INFINITY;
  for (let i = 0; i < short.size; i++) {
    const k = within(long, allowed - (short.loss[i] ?? 0));
    if (k < 0) break;
    least = Math.min(least, (short.cost[i] ?? 0) + (long.cost[k] ?? 0));
  }
  return least;
}
