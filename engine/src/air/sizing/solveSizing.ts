import { type CompiledSizing, compileSizing, costShown, perPascal } from './compile.ts';
import { costWithin, frontOf, sizeOf, within } from './front.ts';
import { leastOf } from './least.ts';
import { nextSizes } from './nextSizes.ts';
import { nothingFits } from './nothingFits.ts';
import { forcedCosts } from './outside.ts';
import type { ExchangePoint, Sizing, SizingProof, SizingSpec } from './spec.ts';
import { systemOf } from './totals.ts';
import { choiceAt, type Fronts, frontsUpward } from './upward.ts';

/** How far beyond the budget the exchange between pressure and cost is shown. */
const shownBeyond = 1.25;
/** Pieces into which the pressure is cut where the exact fronts have too many points. */
const pieces = 1500;
/** Sums of two points that one step of the exact way may take. */
const mostSums = 4_000_000;

/**
 * The cheapest choice of one option a section whose hardest supply way and hardest return way together keep within the
 * budget: exact, by fronts of (pressure, cost) merged up the tree. Pressures count in whole micropascals, cost in whole
 * cents or seconds; equal cost takes less pressure, then the option named first. With too many points to carry, pressures
 * are cut into pieces, rounded up for the choice and down for a bound, and the gap between the two is stated. Where
 * nothing fits it says what the least is, along which ways, and which single limits lifted would help. Goal `static`
 * takes the least pressure, then the least money. `effort`: sums of two points one exact step may take. Throws on what is no tree or no number. Source: `air.sizing`.
 */
export function solveSizing(spec: SizingSpec, effort: number = mostSums): Sizing {
  const c = compileSizing(spec);
  const least = leastOf(c);
  const leastPressure = least.supply + least.return;
  if (!(leastPressure <= c.budget)) return nothingFits(c);
  const limit = Math.ceil(c.budget * shownBeyond);
  // The least static is what the cheapest system costs when there is no more pressure than that.
  const held = spec.goal === 'static' ? { ...c, budget: leastPressure } : c;
  const exact = frontsUpward(held, limit, effort);
  const cheapest = exact && within(exact.system, held.budget);
  return exact && cheapest !== undefined
    ? fits(c, { held, fronts: exact, choice: choiceAt(held, exact, cheapest), proof: { kind: 'proved' } })
    : fits(c, bounded(held, limit));
}

/** A choice, and the fronts it was taken from: of the system held to the budget that counts, its pressures perhaps rounded up. */
type Found = {
  readonly held: CompiledSizing;
  readonly fronts: Fronts;
  readonly choice: readonly number[];
  readonly proof: SizingProof;
};

function fits(c: CompiledSizing, { held, fronts, choice, proof }: Found): Sizing {
  const { goal } = c.spec;
  const forced = forcedCosts(held, fronts);
  const least = leastOf(c);
  const second = runnerUp(held, fronts, choice, forced);
  return {
    status: 'fits',
    goal,
    budget: c.budget / perPascal,
    best: systemOf(c, choice),
    proof,
    ...(second ? { runnerUp: { ...systemOf(c, second), differs: differing(c, choice, second) } } : {}),
    next: nextSizes(c, choice, forced),
    front: exchange(c, fronts),
    leastPressure: (least.supply + least.return) / perPascal,
  };
}

const exchange = (c: CompiledSizing, { system }: Fronts): ExchangePoint[] =>
  Array.from({ length: sizeOf(system) }, (_, k) => ({
    pressure: (system.loss[k] ?? 0) / perPascal,
    cost: costShown(system.cost[k] ?? 0, c.spec.goal),
  }));

const differing = (c: CompiledSizing, a: readonly number[], b: readonly number[]): string[] =>
  c.sections.flatMap((s, i) => (a[i] === b[i] ? [] : [s.id]));

/** The cheapest choice that differs anywhere: one that differs at a section is the best with another option forced there. */
function runnerUp(
  c: CompiledSizing,
  f: Fronts,
  best: readonly number[],
  forced: readonly (readonly number[])[],
): number[] | undefined {
  let least = Number.POSITIVE_INFINITY;
  let at: readonly [number, number] | undefined;
  forced.forEach((costs, i) => {
    costs.forEach((cost, k) => {
      if (k === best[i] || cost >= least) return;
      least = cost;
      at = [i, k];
    });
  });
  if (!at) return undefined;
  const [section, option] = at;
  const options = c.options.map((front, i) =>
    i === section ? frontOf([{ loss: c.loss[i]?.[option] ?? 0, cost: c.cost[i]?.[option] ?? 0, pick: option }]) : front,
  );
  const narrowed = { ...c, options };
  const way = new Set<number>();
  for (let i = section; i >= 0; i = c.parent[i] ?? -1) way.add(i);
  const again = frontsUpward(narrowed, c.budget, Number.POSITIVE_INFINITY, { known: f, only: way });
  return again ? choiceAt(narrowed, again, within(again.system, c.budget)) : undefined;
}

/** The same system with every pressure a whole number of pieces. */
function cut(c: CompiledSizing, piece: number, round: (x: number) => number): CompiledSizing {
  const to = (x: number) => round(x / piece) * piece;
  const loss = c.loss.map((list) => list.map(to));
  const options = c.usable.map((list, i) =>
    frontOf(list.map((k) => ({ loss: loss[i]?.[k] ?? 0, cost: c.cost[i]?.[k] ?? 0, pick: k }))),
  );
  return { ...c, loss, end: c.end.map(to), options };
}

function bounded(c: CompiledSizing, limit: number): Found {
  const piece = Math.max(1, Math.ceil(c.budget / pieces));
  const [held, low] = [cut(c, piece, Math.ceil), cut(c, piece, Math.floor)];
  const [fronts, lower] = [held, low].map((x) => frontsUpward(x, limit, Number.POSITIVE_INFINITY));
  if (!fronts || !lower) throw new Error('assert: a front of pieces is too long');
  const point = within(fronts.system, c.budget);
  // Rounded up, even the most generous sizes may no longer fit; they do in truth.
  const choice = point < 0 ? c.options.map((o) => o.pick[0] ?? 0) : choiceAt(held, fronts, point);
  const cost = choice.reduce((a, k, i) => a + (c.cost[i]?.[k] ?? 0), 0);
  const bound = costWithin(lower.system, c.budget);
  const proof: SizingProof =
    cost === bound
      ? { kind: 'proved' }
      : { kind: 'bounded', bound: costShown(bound, c.spec.goal), gap: (cost - bound) / cost };
  return { held, fronts, choice, proof };
}
