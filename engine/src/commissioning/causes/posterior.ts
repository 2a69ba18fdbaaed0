import type { Group } from '../../coupling/asBuilt/system.ts';
import { densities, type Heard, type Point, pointsOf } from './likelihood.ts';
import { chanceOfYes, lookOf } from './looks.ts';
import { paired, pairedPoints } from './pairs.ts';
import type { Cause, ResponseTable } from './table.ts';

/** A look with its answer. */
export type Looked = { readonly id: string; readonly yes: boolean };

/** One cause, or two at once. `chance` sums to 1 over all. */
export type Suspect = { readonly id: string; readonly causes: readonly string[]; readonly chance: number };

/** One suspect at one severity, with its share of all chances. */
export type Weighed = { readonly suspect: number; readonly point: Point; readonly chance: number };

export type Posterior = {
  /** Likeliest first. */
  readonly suspects: readonly Suspect[];
  /** By cause, alone or with another, its chance in all. */
  readonly involved: Readonly<Record<string, number>>;
  readonly weighed: readonly Weighed[];
  /** Kinds of reading that were heard; with one alone nothing is called more than four fifths likely. */
  readonly groups: readonly (Group | 'look')[];
};

/** Most that readings of one kind alone can make of a cause. Source: `commissioning.one-kind`. */
export const oneKindMost = 0.8;

/**
 * Chances of every cause and every two of them, from what was read and seen. Closed form: readings are normal about what
 * the table expects, correlated by what their method and the plan have in common, severities are summed over. `weigh`
 * multiplies a cause's chance before that, for what is known of the state. No readings: the chances before.
 */
export function posteriorOf(
  table: ResponseTable,
  heard: readonly Heard[],
  looked: readonly Looked[],
  weigh: (cause: Cause) => number,
): Posterior {
  const density = densities(table, heard);
  const hypotheses = [
    ...table.causes.map((c) => ({ causes: [c], log: Math.log(c.prior * weigh(c)), points: pointsOf(c) })),
    ...paired(table, heard, weigh).map(({ causes, prior }) => ({
      causes,
      log: Math.log(prior),
      points: pairedPoints(table, causes[0], causes[1]),
    })),
  ].filter((h) => h.log > Number.NEGATIVE_INFINITY);
  const logs = hypotheses.map((h) => {
    const seen = h.log + looked.reduce((sum, l) => sum + Math.log(chanceOfLook(l, h.causes)), 0);
    return h.points.map((p) => seen + p.logWeight + density.log(p));
  });
  const top = logs.flat().reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const raw = logs.map((of) => of.map((l) => Math.exp(l - top)));
  const all = raw.flat().reduce((a, b) => a + b, 0);
  const groups = [
    ...new Set([
      ...heard.map((h) => table.channels[h.channel]?.group ?? 'pressure'),
      ...looked.map(() => 'look' as const),
    ]),
  ];
  const chances = raw.map((of) => of.reduce((a, b) => a + b, 0) / all);
  const before = hypotheses.map((h) => Math.exp(h.log));
  const kept = groups.length === 1 ? held(chances, before) : chances;
  const suspects = hypotheses.map((h, i): Suspect => {
    const causes = h.causes.map((c) => c.id);
    return { id: causes.join(' + '), causes, chance: kept[i] ?? 0 };
  });
  const weighed = hypotheses.flatMap((h, i) =>
    h.points.map((point, k): Weighed => {
      const share = (raw[i]?.[k] ?? 0) / all / (chances[i] || 1);
      return { suspect: i, point, chance: share * (kept[i] ?? 0) };
    }),
  );
  const order = suspects.map((_, i) => i).sort((a, b) => (kept[b] ?? 0) - (kept[a] ?? 0) || a - b);
  const rank = new Map(order.map((i, place) => [i, place]));
  return {
    suspects: order.map((i) => suspects[i] as Suspect),
    involved: involvedIn(suspects, groups.length === 1 ? oneKindMost : 1),
    weighed: weighed.map((w) => ({ ...w, suspect: rank.get(w.suspect) ?? 0 })),
    groups,
  };
}

/** Of two causes either may show. */
function chanceOfLook({ id, yes }: Looked, causes: readonly Cause[]): number {
  const found = lookOf(id);
  if (!found) return 1;
  const chances = causes.map((c) => chanceOfYes(found.look, found.subject, c));
  const any = chances.length === 1 ? (chances[0] ?? 0) : 1 - chances.reduce((no, c) => no * (1 - c), 1);
  return yes ? any : 1 - any;
}

/** What is above the most goes to the others as they stood before. */
function held(chances: readonly number[], before: readonly number[]): readonly number[] {
  const first = chances.findIndex((c) => c > oneKindMost);
  if (first < 0) return chances;
  const rest = before.reduce((sum, b, i) => (i === first ? sum : sum + b), 0);
  const over = (chances[first] ?? 0) - oneKindMost;
  return chances.map((c, i) => (i === first ? oneKindMost : c + (over * (before[i] ?? 0)) / rest));
}

function involvedIn(suspects: readonly Suspect[], most: number): Record<string, number> {
  const chances: Record<string, number> = {};
  for (const { causes, chance } of suspects)
    for (const cause of causes) chances[cause] = (chances[cause] ?? 0) + chance;
  return Object.fromEntries(Object.entries(chances).map(([id, chance]) => [id, Math.min(most, chance)]));
}
