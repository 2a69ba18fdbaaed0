import type { Given, Missing, Range, ResolvedProject } from '@kneewall/project';
import type { OwnSeason } from '../../equipment/result.ts';
import { uniformPresentValue } from '../../physics/money/presentValue.ts';
import { attempt, type Outcome, required, unresolved } from '../../plan/outcome.ts';
import { type Scenario, type Spread, scenario, spread } from '../../plan/scenario.ts';
import { type LifeCosts, type LifePart, lifeParts, type UnitLife } from './lifeCosts.ts';
import { incentivesOf, priceOf } from './purchase.ts';
import { heatFactor, seasonFactor } from './shared.ts';
import { gridYears, ownYears, type UnitTaken, type YearsFrom } from './unitYears.ts';

/** All that one candidate's cost is made of. */
type Case = {
  readonly id: string;
  readonly name: string;
  readonly chosen: boolean;
  readonly unfit?: 'cold' | 'start';
  readonly taken: UnitTaken;
  readonly season: OwnSeason | undefined;
  /** How many times its sheet it draws, by a log. */
  readonly learned: Given | Missing;
  readonly price: Given;
  readonly incentives: readonly Given[];
};

/** Whether one beats another for sure: money by which rounding may differ. */
const tolerance = 1e-6;

/**
 * Every candidate's purchase, energy, wear and upkeep over the years it is to last, in today's money, and which of them
 * is dearer for certain. The years with house and ducts decide what a unit takes: on own power those with its generator,
 * on the grid the chosen unit's bill, carried over by seasonal figures. Missing prices leave a unit out and are named; jobs
 * that are not done leave all pending. Source: `paperwork.life-cost`.
 */
export function lifeCost(from: YearsFrom): Outcome<LifeCosts> {
  return attempt(() => {
    const { project, trades } = from;
    if (!trades.equipment) return unresolved('fault');
    const chosen = required(trades.equipment.chosen);
    const own = trades.offgrid?.own ?? false;
    const years = own ? ownYears(from, chosen) : gridYears(from, chosen);
    const found = Object.keys(trades.equipment.candidates)
      .sort()
      .map((id) => ({ id, found: attempt(() => caseOf(from, id, years[id])) }));
    const cases = found.flatMap(({ found: x }) => (x.ok ? [x.value] : []));
    const left = found.flatMap(({ id, found: x }) =>
      x.ok ? [] : [{ id, name: project.candidates[id]?.name ?? id, paths: x.paths }],
    );
    if (cases.length === 0) return unresolved('missing', ...left.flatMap((x) => x.paths));
    const s = scenario();
    const { generatorHour, otherHeat } = project.work.life;
    return {
      power: own ? 'own' : 'grid',
      years: range(project.work.life.years),
      interest: range(project.work.life.interest),
      units: ranked(cases, from),
      left,
      uncounted: [
        ...(s.maybe(generatorHour) === undefined && cases.some((c) => c.taken.hours > 0)
          ? (['generator-wear'] as const)
          : []),
        ...(s.maybe(otherHeat) === undefined && cases.some((c) => c.taken.stove > 0) ? (['other-heat'] as const) : []),
      ],
    };
  });
}

const range = (g: ResolvedProject['work']['life']['years']): Range => {
  if ('missing' in g) return unresolved('missing', g.path);
  return { low: g.low, likely: g.likely, high: g.high };
};

function caseOf(from: YearsFrom, id: string, year: UnitTaken | Outcome<UnitTaken> | undefined): Case {
  const { project, trades } = from;
  const candidate = trades.equipment?.candidates[id] ?? unresolved('fault');
  if (!year) return unresolved('missing', `candidates.${id}.rows`);
  const taken = 'ok' in year ? required(year) : year;
  const price = priceOf(project, id);
  if ('missing' in price) return unresolved('missing', price.path);
  const holds = trades.equipment?.ranking.find((r) => r.id === id)?.holds !== false && taken.warm;
  const unfit = !holds ? 'cold' : starts(from, id) ? undefined : 'start';
  return {
    id,
    name: candidate.name,
    chosen: candidate.chosen || (trades.equipment?.chosen.ok === true && trades.equipment.chosen.value === id),
    ...(unfit ? { unfit } : {}),
    taken,
    season: candidate.seasons.own.ok ? candidate.seasons.own.value : undefined,
    learned: project.candidates[id]?.learned.power ?? { path: `candidates.${id}.learned.power`, missing: true },
    price,
    incentives: incentivesOf(project, id),
  };
}

/** Whether the inverter's surge carries its start; where either is not known nothing is held against it. */
function starts({ project, trades }: YearsFrom, id: string): boolean {
  const { surge } = project.power.inverter;
  const asked = trades.circuit?.starts?.[id];
  return !trades.offgrid?.own || !asked?.ok || 'missing' in surge || asked.value.likely <= surge.likely;
}

function ranked(cases: readonly Case[], from: YearsFrom): UnitLife[] {
  const loss = from.trades.loads?.lossPerDegree;
  const need = loss?.ok ? loss.value : undefined;
  const parts = (c: Case, s: Scenario) => partsOf(c, from.project, need, s);
  const total = (c: Case, s: Scenario): number => sum(parts(c, s));
  const likely = cases.map((c) => total(c, scenario()));
  const order = cases
    .map((c, i) => ({ c, at: likely[i] ?? 0 }))
    .sort((a, b) => a.at - b.at || (a.c.id < b.c.id ? -1 : 1))
    .map(({ c }) => c);
  const best = order.find((c) => !c.unfit) ?? order[0];
  const spreads = spread((s) => {
    const least = best ? total(best, s) : 0;
    return Object.fromEntries(
      order.flatMap((c) => {
        const mine = total(c, s);
        return [
          [`total ${c.id}`, mine],
          [`beyond ${c.id}`, mine - least],
        ];
      }),
    ) as Record<string, number>;
  });
  return order.map((c): UnitLife => {
    const none: Spread = { low: 0, likely: 0, high: 0, drivers: [] };
    const { low, likely: middle, high } = spreads[`beyond ${c.id}`] ?? none;
    const { id, name, chosen, unfit, taken } = c;
    const { energy, backup, litres, hours, stove } = taken;
    return {
      id,
      name,
      chosen,
      ...(unfit ? { unfit } : {}),
      takes: { energy, backup, litres, hours, stove },
      parts: parts(c, scenario()),
      total: spreads[`total ${id}`] ?? none,
      beyond: { low, likely: middle, high },
      apart: low > tolerance,
    };
  });
}

const sum = (parts: Readonly<Record<LifePart, number>>): number => lifeParts.reduce((a, p) => a + parts[p], 0);

/** Today's money by part in one reading of the project. */
function partsOf(
  { id, taken, season, learned, price, incentives }: Case,
  project: ResolvedProject,
  need: Range | undefined,
  s: Scenario,
): Record<LifePart, number> {
  const { years, interest, upkeep, generatorHour, otherHeat } = project.work.life;
  const worth = uniformPresentValue(s.of(interest), s.of(years));
  const heat = heatFactor(need, s);
  const worse = season ? seasonFactor(id, season, learned, s) - 1 : 0;
  const own = heat * (1 + taken.byHeating * worse);
  const bought = taken.energy > 0 ? heat * (taken.energy + taken.byHeating * worse) : 0;
  const backup = Math.min(bought, heat * taken.backup);
  return {
    purchase: s.of(price),
    incentive: incentives.reduce((a, g) => a - s.of(g), 0),
    fuel: taken.litres > 0 ? worth * own * taken.litres * s.of(project.power.costs.fuel) : 0,
    wear: worth * own * taken.hours * (s.maybe(generatorHour) ?? 0),
    electricity: worth * (bought - backup) * taken.price * priceFactor(project, s),
    backup: worth * backup * taken.price * priceFactor(project, s),
    otherHeat: worth * own * taken.stove * (s.maybe(otherHeat) ?? 0),
    upkeep: worth * s.of(upkeep),
  };
}

/** A tariff entered as a range moves the whole bill in proportion. */
function priceFactor(project: ResolvedProject, s: Scenario): number {
  const { price } = project.power.tariff;
  return 'missing' in price || !(price.likely > 0) ? 1 : s.of(price) / price.likely;
}
