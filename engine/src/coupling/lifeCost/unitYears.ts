import type { ResolvedProject } from '@kneewall/project';
import type { Candidate } from '../../equipment/result.ts';
import { attempt, type Outcome, required, unresolved } from '../../plan/outcome.ts';
import type { TradeResults } from '../../results.ts';
import type { Figures } from '../power/helps/figures.ts';
import type { SeasonFound } from '../season/season.ts';
import { standingDraw } from '../season/standingDraw.ts';
import type { UnitTakes } from './lifeCosts.ts';

/** A candidate's year, and how much of it follows its seasonal figure when that is better or worse than thought. */
export type UnitTaken = UnitTakes & {
  /** kWh, or as a share of the fuel on own power, that goes by the seasonal figure of heating. */
  readonly byHeating: number;
  /** Money for a kWh, what the hours and the highest quarter hours cost counted; nothing on own power. */
  readonly price: number;
  readonly warm: boolean;
};

export type YearsFrom = {
  readonly project: ResolvedProject;
  readonly trades: Readonly<Partial<TradeResults>>;
  readonly season: SeasonFound;
};

/** Hours a year without heat that may be. Source: `offgrid.heat-hours`. */
const coldMost = 24;
const nothing = { energy: 0, backup: 0, litres: 0, hours: 0, stove: 0, price: 0 };

/** On own power every candidate has been through the same year with house, ducts and power: its fuel is read off. */
export function ownYears({ season }: YearsFrom, chosen: string): Record<string, UnitTaken> {
  const { base, units } = required(season.powerHelps);
  const share = unitShare(season);
  const taken = (year: Figures): UnitTaken => ({
    ...nothing,
    litres: year.litres,
    hours: year.generator,
    stove: year.stove,
    byHeating: share,
    warm: year.cold <= Math.max(coldMost, base.cold),
  });
  return Object.fromEntries([[chosen, taken(base)], ...units.map((u) => [u.id, taken(u.year)] as const)]);
}

/** The unit's share of all electricity in the year; all of it while that is not known. */
function unitShare({ power }: YearsFrom['season']): number {
  if (!power.ok) return 1;
  const sum = (of: 'unit' | 'household' | 'standing'): number => power.value.months.reduce((a, m) => a + m[of], 0);
  const all = sum('unit') + sum('household') + sum('standing');
  return all > 0 ? sum('unit') / all : 1;
}

/**
 * On the grid the chosen unit's year is known hour by hour; another one's follows from it by their own seasonal figures,
 * its standby and heaters by their watts. So like units cost alike, and the chosen one costs what its year says.
 */
export function gridYears(from: YearsFrom, chosen: string): Record<string, Outcome<UnitTaken>> {
  const { trades, season } = from;
  const candidates = trades.equipment?.candidates ?? {};
  const own = candidates[chosen] ?? unresolved('missing', 'candidates');
  const year = required(season.unitYear);
  const { unit: drawn, bills } = required(season.gridYear);
  const paid = bills ?? unresolved('missing', 'power.tariff.price');
  const price = drawn > 0 ? (paid.all.total - paid.without.total) / drawn : 0;
  const heating = year.heating.compressor + year.heating.strips;
  const standing = Math.max(0, drawn - heating - year.cooling.compressor);
  return Object.fromEntries(
    Object.entries(candidates).map(([id, candidate]) => [
      id,
      attempt((): UnitTaken => {
        const heat = (heating * ratioOf(own)) / ratioOf(candidate);
        const cool = (year.cooling.compressor * coolingOf(own, candidate)) / coolingOf(candidate, own);
        const backup = Math.min(heat, required(candidate.seasons.own).character.backup * year.heating.heat);
        const energy = heat + cool + standingOf(from, id, chosen, standing);
        return { ...nothing, energy, backup, byHeating: heat, price, warm: true };
      }),
    ]),
  );
}

const ratioOf = ({ seasons }: Candidate): number => required(seasons.own).ratio.likely;

/** A published cooling figure; where either sheet has none, both cool alike. */
function coolingOf({ seasons }: Candidate, beside: Candidate): number {
  const [own, other] = [seasons.usCooling.season, beside.seasons.usCooling.season];
  return own.ok && other.ok && own.value.ratio > 0 && other.value.ratio > 0 ? own.value.ratio : 1;
}

/** kWh of standby and heaters: the hours for which the chosen one's heaters ran, with this one's watts. */
function standingOf({ project }: YearsFrom, id: string, chosen: string, standing: number): number {
  const [mine, theirs] = [standingDraw(project, id), standingDraw(project, chosen)];
  const hours = 8.76;
  const heaters = theirs.crankcase + theirs.panHeater;
  const ran = heaters > 0 ? Math.max(0, standing - hours * theirs.standby) / heaters : 0;
  return standing + hours * (mine.standby - theirs.standby) + ran * (mine.crankcase + mine.panHeater - heaters);
}
