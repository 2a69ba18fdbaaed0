import { inIdOrder, type ResolvedProject } from '@kneewall/project';
import { engineAir, generatorKeeps, joinedLoss } from '../physics/power/index.ts';
import { attempt, unresolved } from '../plan/outcome.ts';
import { type Scenario, scenario } from '../plan/scenario.ts';
import type { TradeInput } from '../plan/trade.ts';
import { costsOf, gridOf } from './gridDesign.ts';
import { householdOf } from './household.ts';
import type { ArrayInputs, BatteryInputs, GeneratorInputs, OffgridResult, PowerInputs } from './result.ts';

type Power = ResolvedProject['power'];
type Site = ResolvedProject['site'];

/** The power system in plain numbers, as likely as it is known. Pure; on the grid nothing is asked. */
export function design({ project: { power, site } }: TradeInput): OffgridResult {
  const s = scenario();
  const own = ownPower(power);
  return {
    own,
    inputs: attempt(() => (own ? powerInputs(power, site, s) : unresolved('missing', 'power.supply'))),
    costs: attempt(() => costsOf(power.costs)),
    ...(own
      ? {}
      : gridOf(power, s, {
          arrays: () => arraysOf(power, s),
          battery: () => batteryInputs(power, s),
          household: () => householdOf(power.household, s),
        })),
    life: attempt(() => {
      const { cycles, years } = power.battery;
      if ('missing' in cycles || 'missing' in years) return unresolved('missing', 'power.battery.cycles');
      const range = ({ low, likely, high }: typeof cycles) => ({ low, likely, high });
      return { cycles: range(cycles), years: range(years) };
    }),
    workings: {},
    wanted: [],
  };
}

/** Whether the electricity is the project's own. */
const ownPower = ({ supply }: Power): boolean => 'choice' in supply && supply.choice === 'own';

function powerInputs(power: Power, site: Site, s: Scenario): PowerInputs {
  const arrays = arraysOf(power, s);
  if (arrays.length === 0) return unresolved('missing', 'power.arrays');
  const { inverter, charger } = power;
  const generator = generatorInputs(power, site, s);
  const stove = s.maybe(power.stove.heat) ?? 0;
  const most = s.of(inverter.continuous);
  if (most <= 0) return unresolved('missing', 'power.inverter.continuous');
  return {
    arrays,
    battery: batteryInputs(power, s),
    inverter: { most, nominal: s.of(inverter.efficiency), idle: s.of(inverter.idle) },
    charger: { most: s.of(power.generator.charging), kept: s.of(charger.kept) },
    ...(generator ? { generator } : {}),
    ...(stove > 0 ? { stove: { heat: stove, lightBelow: s.of(power.stove.lightBelow) } } : {}),
    household: householdOf(power.household, s),
  };
}

const arraysOf = (power: Power, s: Scenario): ArrayInputs[] =>
  inIdOrder(power.arrays).map(([id, a]) => arrayInputs(id, a, s.of(power.charger.solar), s));

function arrayInputs(id: string, a: Power['arrays'][string], kept: number, s: Scenario): ArrayInputs {
  const count = Math.round(s.of(a.rows.count));
  return {
    id,
    rated: s.of(a.power),
    perKelvin: s.of(a.perKelvin),
    tilt: s.of(a.tilt),
    azimuth: (s.of(a.azimuth) + 360) % 360,
    mounting: s.choice(a.mounting),
    lost: joinedLoss([s.of(a.soiling), 1 - kept]),
    snow: s.of(a.snow),
    ...(count > 1 ? { rows: { count, pitch: s.of(a.rows.pitch), slant: s.of(a.rows.slant) } } : {}),
  };
}

/** Share that is used where nobody says. Source: `offgrid.usable` (common practice). */
const usable = { 'lithium-iron-phosphate': 0.9, 'lead-acid': 0.5, other: 0.8 } as const;

function batteryInputs({ battery: b }: Power, s: Scenario): BatteryInputs {
  const chemistry = s.choice(b.chemistry);
  const [chargeMost, dischargeMost] = [s.maybe(b.chargeMost), s.maybe(b.dischargeMost)];
  const energy = s.of(b.energy);
  if (energy <= 0) return unresolved('missing', 'power.battery.energy');
  return {
    energy,
    chemistry,
    place: s.choice(b.place),
    usable: s.maybe(b.usable) ?? usable[chemistry],
    roundTrip: s.of(b.roundTrip),
    cold: s.of(b.cold),
    ...(chargeMost === undefined ? {} : { chargeMost }),
    ...(dischargeMost === undefined ? {} : { dischargeMost }),
    heater: s.of(b.heater),
    heaterBelow: s.of(b.heaterBelow),
    boxLoss: s.of(b.boxLoss),
  };
}

/** With what its engine keeps of its power in thin air; none where no rated power is given. */
function generatorInputs({ generator: g }: Power, { elevation }: Site, s: Scenario): GeneratorInputs | undefined {
  const rated = s.maybe(g.power);
  if (rated === undefined || rated <= 0) return undefined;
  return {
    rated: rated * generatorKeeps(s.of(elevation), engineAir),
    fuel: s.choice(g.fuel),
    startBelow: s.of(g.startBelow),
    stopAbove: s.of(g.stopAbove),
    least: s.of(g.least),
  };
}
