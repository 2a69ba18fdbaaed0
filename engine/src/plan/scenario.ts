import type { Chosen, Given, Missing, Range } from '@kneewall/project';
import { unresolved } from './outcome.ts';

/**
 * One reading of the project: which end of each range is taken. A trade reads every number through `of`, so that the
 * same code gives the likely answer and, with one input moved, what that input is worth.
 */
export type Scenario = {
  /** The number to use; ends the enclosing `attempt` when nothing was entered. */
  of(given: Given | Missing): number;
  /** The same, or undefined where a field may stay empty. */
  maybe(given: Given | Missing): number | undefined;
  /** The answer to use. */
  choice<T extends string>(chosen: Chosen<T> | Missing): T;
  /**
   * A piece of the answer that reads only some inputs. Where the moved input is none of them the piece of the likely
   * scenario is used again: the same value, without the work. `key` names the piece within one spread.
   */
  part<T>(key: string, build: (s: Scenario) => T): T;
};

/** Pieces of the likely scenario, each with the inputs it read. */
type Parts = Map<string, { readonly value: unknown; readonly read: ReadonlySet<string> }>;

export type End = 'low' | 'high';

/** `moved` shifts one input to one of its ends; `seen` collects every number that is read. */
export function scenario(moved?: { path: string; end: End }, seen?: Map<string, Given>, parts?: Parts): Scenario {
  const of = (given: Given | Missing): number => {
    if ('missing' in given) return unresolved('missing', given.path);
    seen?.set(given.path, given);
    return moved?.path === given.path ? given[moved.end] : given.likely;
  };
  const self: Scenario = {
    of,
    maybe: (given) => ('missing' in given ? undefined : of(given)),
    choice: (chosen) => ('missing' in chosen ? unresolved('missing', chosen.path) : chosen.choice),
    part: (key, build) => {
      if (!parts) return build(self);
      const kept = parts.get(key);
      if (moved && kept) return kept.read.has(moved.path) ? build(self) : (kept.value as ReturnType<typeof build>);
      const mine = new Map<string, Given>();
      const value = build(scenario(moved, mine, parts));
      for (const [path, given] of mine) seen?.set(path, given);
      parts.set(key, { value, read: new Set(mine.keys()) });
      return value;
    },
  };
  return self;
}

/** A reading in which the named inputs take the given numbers and all others their likely ones. */
export const sampledScenario = (values: ReadonlyMap<string, number>): Scenario =>
  scenarioOf((given) => values.get(given.path));

/**
 * A reading in which each input takes what `numberFor` says of it, and its likely number where that is undefined. One
 * unknown may stand behind several numbers (shelter moves the wind of the night and of the day): each has its own range.
 */
export function scenarioOf(numberFor: (given: Given) => number | undefined): Scenario {
  const likely = scenario();
  const of = (given: Given | Missing): number =>
    'missing' in given ? likely.of(given) : (numberFor(given) ?? given.likely);
  const self: Scenario = {
    of,
    maybe: (given) => ('missing' in given ? undefined : of(given)),
    choice: likely.choice,
    part: (_key, build) => build(self),
  };
  return self;
}

/** Every input that a model reads and that has a width, by path. */
export function rangesRead(model: (s: Scenario) => unknown): Given[] {
  const seen = new Map<string, Given>();
  model(scenario(undefined, seen));
  return widthsOf(seen);
}

const widthsOf = (seen: ReadonlyMap<string, Given>): Given[] =>
  [...seen.values()].filter((g) => g.low < g.high).sort((a, b) => (a.path < b.path ? -1 : 1));

/** How far one input alone moves an output: from its low end and its high end, signed, in the output's unit. */
export type Driver = { readonly path: string; readonly atLow: number; readonly atHigh: number };

export type Spread = Range & { readonly drivers: readonly Driver[] };

/**
 * Carries input ranges to outputs one input at a time and joins the shifts as independent (root of the sum of
 * squares, upward and downward apart). First order: right for small or near-linear effects, and it names for each
 * output the inputs that move it most. `model` must return the same keys in every scenario.
 * Source: `spread.first-order`.
 */
export function spread<K extends string>(model: (s: Scenario) => Readonly<Record<K, number>>): Record<K, Spread> {
  const seen = new Map<string, Given>();
  const parts: Parts = new Map();
  const likely = model(scenario(undefined, seen, parts));
  const moves = widthsOf(seen).map((g) => ({
    path: g.path,
    low: moved(model, g, 'low', likely, parts),
    high: moved(model, g, 'high', likely, parts),
  }));
  const keys = Object.keys(likely) as K[];
  return Object.fromEntries(
    keys.map((key) => {
      const drivers = moves.map((m) => ({
        path: m.path,
        atLow: m.low[key] - likely[key],
        atHigh: m.high[key] - likely[key],
      }));
      return [key, join(likely[key], drivers)];
    }),
  ) as Record<K, Spread>;
}

const moved = <K extends string>(
  model: (s: Scenario) => Readonly<Record<K, number>>,
  given: Given,
  end: End,
  likely: Readonly<Record<K, number>>,
  parts: Parts,
): Readonly<Record<K, number>> =>
  given[end] === given.likely ? likely : model(scenario({ path: given.path, end }, undefined, parts));

function join(likely: number, drivers: readonly Driver[]): Spread {
  let up = 0;
  let down = 0;
  for (const d of drivers) {
    up += Math.max(d.atLow, d.atHigh, 0) ** 2;
    down += Math.min(d.atLow, d.atHigh, 0) ** 2;
  }
  const reach = (d: Driver) => Math.max(Math.abs(d.atLow), Math.abs(d.atHigh));
  const ranked = drivers.filter((d) => reach(d) > 0).sort((a, b) => reach(b) - reach(a) || (a.path < b.path ? -1 : 1));
  return { low: likely - Math.sqrt(down), likely, high: likely + Math.sqrt(up), drivers: ranked };
}
