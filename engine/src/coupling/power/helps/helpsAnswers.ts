import type { Cost } from '../../houseYear/measures.ts';
import type { Change, ChangeKind } from './change.ts';
import { type Figures, figureCount, fromRow } from './figures.ts';
import type { PowerHelpsInputs } from './helpsJob.ts';
import { changesOf } from './helpsRows.ts';

/** One change: the year it makes, what it takes off, and what that costs and saves. */
export type Help = {
  readonly kind: ChangeKind;
  readonly of?: string;
  readonly amount?: number;
  readonly year: Figures;
  /** Hours of the generator, litres, and hours without heat, each less by so many a year. */
  readonly hours: number;
  readonly litres: number;
  readonly warmer: number;
  readonly cost?: Cost;
  /** Money once for each hour a year that it saves: of the generator, or without one of heat held back. */
  readonly perHour?: number;
  /** Years in which the fuel saved pays for it; none where it saves none. */
  readonly payback?: { readonly low: number; readonly high: number };
};

/** A unit through the same year: as it is set up, and were the generator not to start. */
export type UnitBeside = {
  readonly id: string;
  readonly year: Figures;
  /** Hours without heat, and held back, without the generator. */
  readonly alone?: { readonly cold: number; readonly held: number };
};

export type PowerHelps = {
  readonly base: Figures;
  /** Those that save hours, the cheapest hour first; then the others. */
  readonly ranked: readonly Help[];
  readonly units: readonly UnitBeside[];
  readonly aged: readonly { readonly share: number; readonly year: Figures }[];
};

/** Hours a year from which on a change is said to help. */
const worth = 1;

/** The answer from all rows, in the order of the changes. */
export function helpsAnswers(inputs: PowerHelpsInputs, rows: readonly (readonly number[])[]): PowerHelps {
  const all = changesOf(inputs).map((change, i) => {
    const row = rows[i] ?? [];
    const [now, before] = [fromRow(row.slice(0, figureCount)), fromRow(row.slice(figureCount, 2 * figureCount))];
    return { change, now, before, alone: row.slice(2 * figureCount) };
  });
  const helps = all.filter((x) => x.change.kind !== 'aged').map((x) => helpOf(inputs, x.change, x.now, x.before));
  const base = all[0]?.before ?? fromRow([]);
  return {
    base,
    ranked: inOrderOfWorth(bestTilt(helps)),
    units: all.flatMap(({ change, now, alone }) => {
      if (change.kind !== 'unit') return [];
      const { cold, held } = fromRow(alone);
      return [{ id: change.of ?? '', year: now, ...(inputs.power.generator ? { alone: { cold, held } } : {}) }];
    }),
    aged: all
      .filter((x) => x.change.kind === 'aged')
      .map((x) => ({ share: x.change.amount ?? 1, year: x.now }))
      .sort((a, b) => b.share - a.share),
  };
}

function helpOf(inputs: PowerHelpsInputs, { kind, of, amount, cost }: Change, now: Figures, before: Figures): Help {
  const hours = before.generator - now.generator;
  const litres = before.litres - now.litres;
  const warmer = before.cold - now.cold;
  const saved = inputs.power.generator ? hours : before.held - now.held;
  const { fuel } = inputs.costs;
  const pays = cost && litres >= 1 && fuel.low > 0 && inputs.power.generator;
  return {
    kind,
    ...(of === undefined ? {} : { of }),
    ...(amount === undefined ? {} : { amount }),
    year: now,
    hours,
    litres,
    warmer,
    ...(cost ? { cost } : {}),
    ...(cost && saved >= worth ? { perHour: Math.max(0, cost.likely) / saved } : {}),
    ...(pays
      ? {
          payback: {
            low: Math.max(0, cost.low) / (litres * fuel.high),
            high: Math.max(0, cost.high) / (litres * fuel.low),
          },
        }
      : {}),
  };
}

/** Of the steeper panels only the tilt that saves most. */
function bestTilt(helps: readonly Help[]): Help[] {
  const steep = helps.filter((h) => h.kind === 'steep').sort((a, b) => b.hours - a.hours || b.warmer - a.warmer);
  return helps.filter((h) => h.kind !== 'steep' || h === steep[0]);
}

/** Litres a year from which on fuel counts where no hour is saved. */
const fuelWorth = 10;
/** More hours a year without heat than this, and the change is no help. Source: `offgrid.heat-hours`. */
const colder = 24;

/** By what an hour costs, what saves more first where that is equal; then what saves only fuel, has no price, does not help, or cools the house. */
function inOrderOfWorth(helps: readonly Help[]): Help[] {
  const group = (h: Help): number => {
    if (-h.warmer > colder) return 3;
    return h.perHour !== undefined ? 0 : h.payback && h.litres >= fuelWorth ? 1 : 2;
  };
  const price = (h: Help): number => h.perHour ?? h.payback?.high ?? 0;
  return [...helps].sort(
    (a, b) => group(a) - group(b) || price(a) - price(b) || b.hours - a.hours || b.warmer - a.warmer,
  );
}
