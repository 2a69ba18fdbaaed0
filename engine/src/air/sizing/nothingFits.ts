import { type CompiledSizing, perPascal } from './compile.ts';
import { type Least, leastOf, leastOption } from './least.ts';
import type { BrokenLimit, HardestWay, Relaxation, Sizing } from './spec.ts';

/** How many ways out are told. */
const waysOut = 3;
/** Air more than twice as fast as the limit is no way out. */
const speedUpMost = 2;

/** Why nothing fits: the least that is needed, the ways that need it, and the smallest single limits that would have to give. */
export function nothingFits(c: CompiledSizing): Sizing {
  const least = leastOf(c);
  const needed = least.supply + least.return;
  const closed = c.sections.flatMap((s, i) => (leastOption(c, i) < Number.POSITIVE_INFINITY ? [] : [s.id]));
  const raise: Relaxation[] =
    closed.length > 0 ? [] : [{ limit: 'budget', from: c.budget / perPascal, to: needed / perPascal, enough: true }];
  return {
    status: 'nothing-fits',
    goal: c.spec.goal,
    budget: c.budget / perPascal,
    closed,
    ...(closed.length > 0 ? {} : { leastPressure: needed / perPascal }),
    ways: closed.length > 0 ? [] : [hardestWay(c, least, 'supply'), hardestWay(c, least, 'return')].flat(),
    relaxations: smallestFirst([...raise, ...lifted(c, closed)]),
  };
}

function hardestWay(c: CompiledSizing, least: Least, side: 'supply' | 'return'): HardestWay[] {
  const hardest = (list: readonly number[]) =>
    list.reduce<number | undefined>(
      (worst, i) => (worst === undefined || (least.beyond[i] ?? 0) > (least.beyond[worst] ?? 0) ? i : worst),
      undefined,
    );
  const sections: string[] = [];
  for (let at = hardest(c.roots[side]); at !== undefined; ) {
    sections.push(c.sections[at]?.id ?? '');
    const next = hardest(c.children[at] ?? []);
    // A register of the section itself may be harder than all that hangs beyond.
    at = next !== undefined && (least.beyond[next] ?? 0) >= (c.end[at] ?? 0) ? next : undefined;
  }
  return sections.length > 0 ? [{ side, sections, least: least[side] / perPascal }] : [];
}

/**
 * Each kind of limit of each section lifted alone, as little as helps: so far that everything fits, or, in a section
 * with no size left, so far that it has one. With several closed sections only those help, and none is enough alone.
 */
function lifted(c: CompiledSizing, closed: readonly string[]): Relaxation[] {
  return c.sections.flatMap((s, i) => {
    if (closed.length > 0 && !closed.includes(s.id)) return [];
    const barred = s.options.flatMap((o, k) => {
      const [only, ...more] = o.breaks ?? [];
      if (!only || more.length > 0 || (s.fixed && k === 0) || tooFast(only)) return [];
      const tried = leastOf(c, (j) => (j === i ? Math.min(leastOption(c, i), c.loss[i]?.[k] ?? 0) : leastOption(c, j)));
      const enough = tried.supply + tried.return <= c.budget;
      return enough || closed.length > 0 ? [{ option: o.id, broken: only, enough, cost: c.cost[i]?.[k] ?? 0 }] : [];
    });
    return (['depth', 'width', 'velocity', 'runs', 'bought'] as const).flatMap((limit) => {
      const of = barred.filter((b) => b.broken.limit === limit);
      const [pick] = of.sort(
        (a, b) => Number(b.enough) - Number(a.enough) || a.broken.value - b.broken.value || a.cost - b.cost,
      );
      return pick ? [relaxation(s.id, pick.option, pick.broken, pick.enough)] : [];
    });
  });
}

const relaxation = (section: string, option: string, b: BrokenLimit, enough: boolean): Relaxation => ({
  limit: b.limit,
  section,
  option,
  from: b.most,
  to: b.value,
  enough,
});

const tooFast = (b: BrokenLimit): boolean => b.limit === 'velocity' && b.value > speedUpMost * b.most;

/**
 * At most three: only those that are enough, where any is; what asks for the least, as a share of the limit, first; one
 * of a kind before a second of it.
 */
export function smallestFirst(list: readonly Relaxation[]): Relaxation[] {
  const asks = (r: Relaxation) => Math.abs(r.to - r.from) / Math.max(Math.abs(r.from), 1e-9);
  const enough = list.filter((r) => r.enough);
  // Sorting keeps what asks for equally much in its order.
  const sorted = [...(enough.length > 0 ? enough : list)].sort((a, b) => asks(a) - asks(b));
  const firsts = sorted.filter((r, k) => sorted.findIndex((x) => x.limit === r.limit) === k);
  return [...firsts, ...sorted.filter((r) => !firsts.includes(r))].slice(0, waysOut);
}
