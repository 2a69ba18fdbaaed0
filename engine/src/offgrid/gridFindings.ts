import type { RideThrough } from '../coupling/power/grid/rideThrough.ts';
import { required, unresolved } from '../plan/outcome.ts';
import type { PlanView } from '../plan/trade.ts';
import { type Found, found } from './draftOf.ts';
import type { OffgridResult } from './result.ts';

/** What the grid answers for, where its price or a battery for outages is entered. */
export function gridFindings({ grid }: OffgridResult, view: PlanView): Found[] {
  if (!grid) return [];
  const [priced, outage] = grid.ok ? [grid.value.tariff !== undefined, grid.value.outage] : [true, false];
  return [...(priced ? [dearHours(view)] : []), ...(outage ? [outageHeat(view)] : [])];
}

/** Share of the unit's bill that comes of dear hours and of the demand charge, beyond what the flat price would ask. */
function dearHours(view: PlanView): Found {
  const source = 'grid.dear-hours';
  const year = view.season.gridYear.ok ? view.season.gridYear.value : undefined;
  const bills = year?.bills;
  const facts = {
    ...(year ? { unit: year.unit } : {}),
    ...(bills ? { money: bills.all.total - bills.without.total, demand: bills.all.demand - bills.without.demand } : {}),
  };
  const of = { id: 'grid-cost', holdPoint: 'decide', consequence: 'money', kind: 'fraction' } as const;
  return found({ ...of, limit: { max: 0.25 }, source, facts }, (recorder) => {
    const value = required(view.season.gridYear);
    const { all, without } = value.bills ?? unresolved('missing', 'power.tariff.price');
    const { price } = view.project.power.tariff;
    const flat = 'missing' in price ? unresolved('missing', price.path) : price.likely * value.unit;
    const cost = all.total - without.total;
    recorder.step('M', 'table', {}, cost, '', source);
    recorder.step('E', 'table', {}, value.unit, 'kWh', source);
    recorder.step('M_flat', 'table', {}, flat, '', source);
    const share = (cost - flat) / Math.max(cost, 1);
    recorder.step('share', '(M - M_flat) / max(M, 1)', { M: cost, M_flat: flat }, share, '', source);
    return share;
  });
}

/** Hours for which a full battery keeps the heat on in an outage on the day of the year on which it is hardest. */
function outageHeat(view: PlanView): Found {
  const source = 'grid.outage';
  const outage = view.season.gridYear.ok ? view.season.gridYear.value.outage : undefined;
  const of = { id: 'outage-heat', holdPoint: 'decide', consequence: 'harm', kind: 'time' } as const;
  const facts = outage ? factsOf(outage) : {};
  return found({ ...of, limit: { min: 8 * 3600 }, source, facts }, (recorder) => {
    const { heat } = required(view.season.gridYear).outage ?? unresolved('missing', 'power.battery.energy');
    recorder.step('h', 'table', {}, heat, 'h', source);
    recorder.step('t', 'h * 3600', { h: heat }, heat * 3600, 's', source);
    return heat * 3600;
  });
}

/** What is said of an outage: of the day on which it is hardest, and of starts on all days. */
function factsOf({ through, starts, warm, ...outage }: RideThrough): Record<string, number> {
  const counts = Object.fromEntries(through.map((t) => [`through${t.hours}`, t.starts]));
  return { ...outage, ...counts, starts, warm: warm * 3600 };
}
