import { alternatingFrom, directFor } from './inverter.ts';
import {
  cell,
  generated,
  heated,
  into,
  lost,
  outOf,
  residual,
  running,
  served,
  short,
  stored,
  sunLeft,
  sunRefused,
  sunUsed,
} from './slots.ts';
import { degreeOf as degree, type PowerSystem } from './system.ts';

/** W that the battery gives at its terminals for so many hours: its rate, and what is left above the cold's floor. */
export function givesMost({ battery }: PowerSystem, state: Float64Array, hours: number): number {
  const at = degree(state[cell]!);
  const floor = battery.energy * (1 - battery.capacity[at]! * (1 - battery.kept));
  const left = ((state[stored]! - floor) * 1000 * battery.oneWay) / hours;
  return Math.max(0, Math.min(battery.discharge[at]!, left));
}

/** W that it takes at its terminals for so many hours. */
function takesMost({ battery }: PowerSystem, state: Float64Array, hours: number): number {
  const room = ((battery.energy - state[stored]!) * 1000) / (battery.oneWay * hours);
  return Math.max(0, Math.min(battery.charge[degree(state[cell]!)]!, room));
}

/**
 * W of alternating current to be had in a step of so many hours: by the inverter from sun, W at the bus, and battery,
 * and from the generator, which starts if it must.
 */
export function powerAtHand(system: PowerSystem, state: Float64Array, sun: number, hours: number): number {
  const direct = sun + givesMost(system, state, hours) - system.inverter.idle;
  return alternatingFrom(direct, system.inverter) + system.generator.rated;
}

/** Whether the generator runs in this step. */
function decide(system: PowerSystem, state: Float64Array, byInverter: number, load: number, takes: number): void {
  const { generator, battery } = system;
  if (generator.rated <= 0) return;
  const share = state[stored]! / battery.energy;
  const starts = share < generator.startBelow || byInverter < load;
  const goesOn = state[running]! > 0 && share < generator.stopAbove && takes > 0;
  state[running] = starts || goesOn ? 1 : 0;
}

/**
 * One step of so many hours: sun W at the bus and load W of alternating current in, flows out, the state moved on. The
 * generator carries what it can of the load and charges with the rest; sun comes before the battery; what cannot be
 * served is short. Allocates nothing. Energy closes: `residual` is what the step's balance misses, in W.
 */
export function stepPower(
  system: PowerSystem,
  state: Float64Array,
  flows: Float64Array,
  sun: number,
  load: number,
  ambient: number,
  hours: number,
): void {
  const { battery, inverter, charger, generator } = system;
  const gives = givesMost(system, state, hours);
  const takes = takesMost(system, state, hours);
  decide(system, state, alternatingFrom(sun + gives - inverter.idle, inverter), load, takes);
  const turning = state[running]! > 0;
  const carried = turning ? Math.min(load, generator.rated) : 0;
  // The charger fills what the sun leaves of the battery's rate.
  const room = Math.max(0, takes - Math.max(0, sun - inverter.idle));
  const charging = turning ? Math.min(charger.most, generator.rated - carried, room / charger.kept) : 0;
  const bus = sun + charging * charger.kept;
  const on = bus + gives > inverter.idle;
  const wanted = on ? Math.min(load - carried, inverter.most) : 0;
  const idle = on ? inverter.idle : 0;
  const inverted = Math.min(wanted, alternatingFrom(bus + gives - idle, inverter));
  const drawn = idle + directFor(inverted, inverter);
  const cold = state[cell]! < battery.heaterBelow ? battery.heater : 0;
  const warming = Math.max(0, Math.min(cold, bus + gives - drawn));
  const over = bus - drawn - warming;
  const charge = over > 0 ? Math.min(over, takes) : 0;
  const discharge = over < 0 ? Math.min(-over, gives) : 0;
  const left = over > 0 ? Math.min(over - charge, sun) : 0;
  const before = state[stored]!;
  state[stored] = before + ((charge * battery.oneWay - discharge / battery.oneWay) * hours) / 1000;
  const warmth = charge * (1 - battery.oneWay) + discharge * (1 / battery.oneWay - 1);
  warmCells(system, state, warmth + warming, ambient, hours);
  flows[sunUsed] = sun - left;
  flows[sunLeft] = left;
  flows[sunRefused] = battery.charge[degree(state[cell]!)]! === 0 ? left : 0;
  flows[generated] = carried + charging;
  flows[served] = carried + inverted;
  flows[short] = load - carried - inverted;
  flows[into] = charge;
  flows[outOf] = discharge;
  flows[heated] = warming;
  flows[lost] = drawn - inverted + charging * (1 - charger.kept) + warmth;
  flows[residual] =
    flows[sunUsed]! +
    flows[generated]! -
    flows[served]! -
    warming -
    flows[lost]! -
    ((state[stored]! - before) * 1000) / hours;
}

/** The cells' temperature after a step with so many W in them: exact for air that stands still. */
function warmCells({ battery }: PowerSystem, state: Float64Array, heat: number, ambient: number, hours: number): void {
  const settled = ambient + heat / battery.conductance;
  const decay = Math.exp((-battery.conductance * hours * 3600) / battery.heatCapacity);
  state[cell] = settled + (state[cell]! - settled) * decay;
}
