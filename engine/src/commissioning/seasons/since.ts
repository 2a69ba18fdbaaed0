import type { Group } from '../../coupling/asBuilt/system.ts';
import { methods, usualMeans } from '../methods.ts';
import type { ReadingFound, Visit } from '../result.ts';

/** How a number has moved since the first start, each held against what its own state asks for. */
export type Since = {
  readonly expected: string;
  readonly group: Group;
  /** A share of what was read at first; for temperatures K. */
  readonly change: number;
  /** Its standard deviation: what repeating cures of both readings. What is wrong with the method falls out. */
  readonly error: number;
};

type Counted = ReadingFound & { readonly group: Group; readonly should: number };

/** Readings of a visit that count. Those of like name: the mean of them is held. */
function countedOf({ found }: Visit): Map<string, Counted[]> {
  const counted = found.ok
    ? found.value.readings.filter((r): r is Counted => !r.aside && r.group !== undefined && r.should !== undefined)
    : [];
  const by = new Map<string, Counted[]>();
  for (const r of counted) by.set(r.expected, [...(by.get(r.expected) ?? []), r]);
  return by;
}

/** Numbers read at both visits in the same mode, in the order of the first; nothing where the modes differ. */
export function since(first: Visit, later: Visit): readonly Since[] {
  if (!first.state.ok || !later.state.ok || first.state.value.mode !== later.state.value.mode) return [];
  if (first.doorsShut !== later.doorsShut) return [];
  const now = countedOf(later);
  return [...countedOf(first)].flatMap(([expected, then]): Since[] => {
    const again = now.get(expected);
    const [one] = then;
    if (!again || !one) return [];
    const { group } = one;
    const [before, after] = [offOf(then), offOf(again)];
    const scatter = (readings: readonly Counted[], visit: Visit): number => {
      const means = visit.taken.find((t) => t.expected === expected)?.means ?? usualMeans[group];
      const repeats = visit.taken.filter((t) => t.expected === expected).reduce((sum, t) => sum + t.repeats, 0);
      return methods[means].random / Math.sqrt(Math.max(repeats, readings.length));
    };
    const error = Math.hypot(scatter(then, first), scatter(again, later));
    if (group === 'temperature') return [{ expected, group, change: after - before, error }];
    return before === 0 ? [] : [{ expected, group, change: after / before - 1, error: error * (after / before) }];
  });
}

/** The mean of readings against what is expected: a share, or K for temperatures. */
function offOf(readings: readonly Counted[]): number {
  const each = readings.map(({ group, net, should }) => (group === 'temperature' ? net - should : net / should));
  return each.reduce((sum, x) => sum + x, 0) / each.length;
}
