import type { PowerInputs } from '../../offgrid/result.ts';
import type { Dispatch, DispatchHouse } from '../../physics/dispatch/index.ts';
import { fuelLines, type OwnInverter, tangentsOf } from '../../physics/power/index.ts';
import type { ReadyRuns } from '../power/powerRun.ts';
import type { PowerYearInputs, StandingDraw } from '../power/powerYearJob.ts';
import type { PowerRun } from '../power/runWay.ts';
import { systemOf } from '../power/systemOf.ts';
import { batteryByHour } from './batteryByHour.ts';
import { comfortBand } from './comfort.ts';
import type { ControlRuns } from './controlRuns.ts';
import type { HouseAnswer } from './fitHouse.ts';
import { type HourlyRun, hourlyRun } from './hourly.ts';
import { unitHull } from './unitHull.ts';

/**
 * Litres that a K h too cold and a kWh gone without cost: no fuel is worth them, yet not so dear that rounding hides the
 * fuel. Without a generator they are all there is, and what the household goes without counts first or last.
 */
const dear = { cold: 3, short: 30, shortFirst: 0.1 } as const;

/** °C below which a crankcase heater or a pan's runs. Source: `offgrid.heaters` (common practice). */
const panBelow = 2;

/**
 * The year of hours as a dispatch, at best in all that is not known: the generator at its best load, heat by the lowest
 * convex line, the inverter by its tangents, heaters of the unit as little as they can. Cells are as warm as in the
 * year by the rules.
 */
export function dispatchOf(
  { power, unit, standing }: PowerYearInputs,
  { unlimited, asSet, house }: Pick<ControlRuns, 'unlimited' | 'asSet' | 'house'>,
  ready: Pick<ReadyRuns, 'able' | 'wanted'>,
): Dispatch {
  const system = systemOf(power, true);
  const hourly = hourlyRun(unlimited);
  const { hours: steps, household, cooling, outdoor, sun } = hourly;
  const load = household.map((x, t) => x + (cooling[t] ?? 0) + leastStanding(standing, outdoor[t] ?? 0) / 1000);
  return {
    steps,
    sun,
    direct: hourlyRun(asSet).heater,
    load,
    battery: batteryByHour(system, asSet),
    generator: { most: system.generator.rated / 1000, cost: new Float64Array(steps).fill(litresAtBest(power)) },
    charger: { most: system.generator.rated > 0 ? system.charger.most / 1000 : 0, kept: system.charger.kept },
    inverter: inverterPieces(system.inverter),
    short: { cost: power.generator || power.household.shedFirst === 'heat' ? dear.short : dear.shortFirst },
    house: houseOf(unit.strips, hourly, { ...ready, perHour: Math.round(1 / unlimited.hours) }, unlimited, house),
  };
}

/** Litres for a kWh at full load, where an engine burns least for each. */
export function litresAtBest({ generator }: PowerInputs): number {
  if (!generator) return 0;
  const { idle, perEnergy } = fuelLines[generator.fuel];
  return idle + perEnergy;
}

/** W that the unit draws beside its compressor, at the least that any way of running it leaves. */
const leastStanding = ({ standby, crankcase, panHeater }: StandingDraw, outdoor: number): number =>
  standby + (outdoor < panBelow ? Math.min(crankcase, panHeater) : 0);

const inverterPieces = (own: OwnInverter): Dispatch['inverter'] => ({
  pieces: tangentsOf(own).map(({ width, slope }) => ({ width: width / 1000, kept: slope })),
  idle: own.idle / 1000,
});

function houseOf(
  strips: number,
  { heat, room }: HourlyRun,
  { able, wanted, perHour }: Pick<ReadyRuns, 'able' | 'wanted'> & { readonly perHour: number },
  { weather }: PowerRun,
  { atOnce, gain, left }: HouseAnswer,
): DispatchHouse {
  const aim = (t: number): number => wanted[(t * perHour) % wanted.length] ?? 0;
  const { perRow } = weather.steps;
  return {
    atOnce,
    gain,
    left,
    heat,
    low: room.map((x, t) => Math.min(aim(t) - comfortBand.cooler - x, 0)),
    high: room.map((x, t) => Math.max(aim(t) - x, 0) + comfortBand.warmer),
    pieces: (t) => unitHull(able.heating[Math.floor((t * perHour) / perRow)] ?? [], strips),
    cold: dear.cold,
  };
}

/** The same dispatch with the heat given when the unlimited year gives it, at the best it can cost. */
export function heatAsItIs({ house, ...d }: Dispatch): Dispatch {
  if (!house) return d;
  const drawn = (t: number): number => {
    let left = house.heat[t] ?? 0;
    let kilowatts = 0;
    for (const { width, slope } of house.pieces(t)) {
      const part = Math.min(left, width);
      kilowatts += part * slope;
      left -= part;
    }
    return kilowatts;
  };
  return { ...d, load: d.load.map((x, t) => x + drawn(t)) };
}
