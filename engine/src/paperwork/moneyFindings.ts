import { inHundreds, type LifeCosts, type UnitLife } from '../coupling/lifeCost/lifeCosts.ts';
import { required, unresolved } from '../plan/outcome.ts';
import { type Found, telling } from '../plan/telling.ts';
import type { PlanView } from '../plan/trade.ts';
import type { PaperworkResult, QuoteRow } from './result.ts';

/** Share of the whole job that a quote may leave out. Source: `paperwork.scope` (common practice). */
const leftMost = 0.1;

export function moneyFindings({ quotes }: PaperworkResult, view: PlanView): Found[] {
  const compared = Object.keys(view.project.candidates).length > 1;
  return [...quotes.map(quoted), ...(compared ? [lifeCost(view)] : [])];
}

/** How much of the job a quote leaves out. */
const quoted = (q: QuoteRow): Found =>
  telling('paperwork', `paperwork.${q.id}`)(
    {
      id: `quote:${q.id}`,
      holdPoint: 'decide',
      consequence: 'money',
      kind: 'fraction',
      limit: { max: leftMost },
      source: 'paperwork.scope',
      facts: {
        name: q.name,
        amount: q.amount?.likely ?? 0,
        given: q.amount === undefined ? 0 : 1,
        marked: q.holds.length,
        missing: q.missing.map((m) => m.scope).join(' '),
        ...(q.total.ok ? { total: q.total.value.likely, low: q.total.value.low, high: q.total.value.high } : {}),
      },
    },
    (rec) => {
      const [left, total] = [required(q.left).likely, required(q.total).likely];
      rec.step('left', 'table', {}, left, '', 'paperwork.scope');
      const share = left / total;
      rec.step('share', 'left / total', { left, total }, share, '', 'paperwork.scope');
      return share;
    },
  );

/** Money by which the chosen unit is dearer than the cheapest that fits, at the end most in its favour. */
function lifeCost({ season }: PlanView): Found {
  const source = 'paperwork.life-cost';
  const costs = season.lifeCost.ok ? season.lifeCost.value : undefined;
  return telling('paperwork', 'candidates')(
    {
      id: 'life-cost',
      holdPoint: 'decide',
      consequence: 'money',
      kind: 'money',
      limit: { max: 0 },
      source,
      ...(costs ? { facts: factsOf(costs) } : {}),
    },
    (rec) => {
      const { units, left } = required(season.lifeCost);
      const own = units.find((u) => u.chosen);
      const best = bestOf(units);
      if (!own || !best || units.length < 2)
        return unresolved('missing', ...left.flatMap((x) => x.paths), 'candidates');
      rec.step('own', 'table', {}, own.total.likely, '', source);
      rec.step('least', 'table', {}, best.total.likely, '', source);
      const sure = own.apart ? own.beyond.low : 0;
      rec.step('sure', 'max(0, d)', { d: sure }, Math.max(0, sure), '', source);
      return Math.max(0, sure);
    },
  );
}

/** The cheapest that fits; the cheapest of all where none does. */
const bestOf = (units: readonly UnitLife[]): UnitLife | undefined => units.find((u) => !u.unfit) ?? units[0];

function factsOf({ units, years, interest, left }: LifeCosts): Record<string, number | string> {
  const own = units.find((u) => u.chosen);
  const best = bestOf(units);
  return {
    years: years.likely,
    interest: interest.likely,
    left: left.map((x) => x.name).join(', '),
    alike: units
      .filter((u) => !u.apart && !u.unfit && u !== best)
      .map((u) => u.name)
      .join(', '),
    ...(own
      ? {
          own: own.name,
          low: inHundreds(own.total.low),
          high: inHundreds(own.total.high),
          likely: inHundreds(own.total.likely),
          price: own.parts.purchase,
          beyond: inHundreds(own.beyond.likely),
          beyondLow: inHundreds(own.beyond.low),
          beyondHigh: inHundreds(own.beyond.high),
        }
      : {}),
    ...(best ? { best: best.name, isBest: best === own ? 1 : 0, unfit: best.unfit ?? '' } : {}),
  };
}
