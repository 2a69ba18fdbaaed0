import { inOrder, type Range, type ResolvedProject } from '@kneewall/project';
import { attempt, unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import type { BatteryInputs, GridInputs, OffgridResult, PowerCosts, PowerInputs, PriceBand, Tariff } from './result.ts';

type Power = ResolvedProject['power'];

/** What more of it costs, entered or by common practice. Source: `helps.costs`. */
export function costsOf(costs: Power['costs']): PowerCosts {
  const range = (x: Power['costs'][keyof PowerCosts]): Range =>
    'missing' in x ? unresolved('missing', x.path) : { low: x.low, likely: x.likely, high: x.high };
  return {
    panels: range(costs.panels),
    battery: range(costs.battery),
    generator: range(costs.generator),
    fuel: range(costs.fuel),
  };
}

/** A battery that is never asked: on the grid without one the house takes what it wants. */
const none: BatteryInputs = {
  energy: 1,
  chemistry: 'lithium-iron-phosphate',
  place: 'heated',
  usable: 0.9,
  roundTrip: 0.95,
  cold: 0.6,
  heater: 0,
  heaterBelow: 5,
  boxLoss: 8,
};

/** How the parts of a power system are read, whoever it belongs to. */
type PartsRead = {
  readonly arrays: () => PowerInputs['arrays'];
  readonly battery: () => BatteryInputs;
  readonly household: () => PowerInputs['household'];
};

/** The house on the grid, where there is something to say: a price, or battery and inverter for outages. */
export function gridOf(power: Power, s: Scenario, read: PartsRead): Pick<OffgridResult, 'grid'> {
  const priced = !('missing' in power.tariff.price);
  const [energy, most] = [s.maybe(power.battery.energy) ?? 0, s.maybe(power.inverter.continuous) ?? 0];
  const outage = energy > 0 && most > 0;
  if (!priced && !outage) return {};
  return {
    grid: attempt((): GridInputs => {
      const { inverter, charger } = power;
      return {
        power: {
          arrays: read.arrays(),
          battery: outage ? read.battery() : none,
          inverter: { most: Math.max(1, most), nominal: s.of(inverter.efficiency), idle: s.of(inverter.idle) },
          charger: { most: 0, kept: s.of(charger.kept) },
          household: read.household(),
        },
        ...(priced ? { tariff: tariffOf(power.tariff, s) } : {}),
        outage,
      };
    }),
  };
}

/** The tariff; of two bands that both hold an hour the upper one in the list counts. */
function tariffOf(tariff: Power['tariff'], s: Scenario): Tariff {
  return {
    price: s.of(tariff.price),
    demand: s.maybe(tariff.demand) ?? 0,
    feedIn: s.maybe(tariff.feedIn) ?? 0,
    bands: inOrder(tariff.bands).map(
      ([id, b]): PriceBand => ({
        id,
        from: s.of(b.from),
        to: s.of(b.to),
        fromMonth: s.maybe(b.fromMonth) ?? 1,
        toMonth: s.maybe(b.toMonth) ?? 12,
        price: s.of(b.price),
      }),
    ),
  };
}
