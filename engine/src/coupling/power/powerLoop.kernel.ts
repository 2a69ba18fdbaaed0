import { heatOfVapour } from '../../physics/air/index.ts';
import {
  aimHeat,
  type Layout,
  limitSystem,
  type State,
  stepBuilding,
  type WeatherSteps,
  wantsMore,
  wantsMoreCold,
} from '../../physics/building/index.ts';
import { type PowerSystem, powerAtHand, powerSlots, stepPower } from '../../physics/power/index.ts';
import { outputFor, powerFor, type UnitRows } from '../season/unitPower.ts';
import type { StandingDraw } from './powerYearJob.ts';
import { raisedBy, type SetPointRule } from './setPointRule.kernel.ts';

/** Everything a step of house and power together reads. */
export type PowerLoop = {
  readonly layout: Layout;
  readonly state: State;
  readonly weather: WeatherSteps;
  readonly able: UnitRows;
  readonly strips: number;
  readonly standing: StandingDraw;
  readonly system: PowerSystem;
  readonly power: Float64Array;
  readonly flows: Float64Array;
  /** W by step, and W of the household by step of the day. */
  readonly sun: Float64Array;
  readonly household: Float64Array;
  /** Share of the household that is served before the unit. */
  readonly before: number;
  /** Whether power holds the unit back; else it takes what it wants and the record tells only what it wants. */
  readonly limited: boolean;
  /** 1 once the house has gone another way than with all the power it wants. */
  readonly parted: Uint8Array;
  /** W of a stove burning at its most, 0 for none; K too cold at which it is lit; whether it burns, and steps since it did. */
  readonly stove: number;
  readonly lightBelow: number;
  readonly burns: Uint32Array;
  /** Whether the battery stands in a heated room. */
  readonly inside: boolean;
  /** °C wanted by step of the day, and K by which each step of the year is warmer than that. */
  readonly wanted: Float64Array;
  readonly raised: Float64Array;
  /** What raises and lowers the steps to come; without it they stand as they are. */
  readonly rule: SetPointRule | undefined;
};

/** By step. W, but `charge` is a share, `cell` and `room` °C; `held` is 1 where power holds the heat back. */
export type PowerRecord = {
  readonly household: Float64Array;
  readonly unit: Float64Array;
  readonly standing: Float64Array;
  readonly heat: Float64Array;
  readonly refused: Float64Array;
  readonly used: Float64Array;
  readonly generator: Float64Array;
  readonly short: Float64Array;
  readonly out: Float64Array;
  readonly heater: Float64Array;
  readonly lost: Float64Array;
  readonly charge: Float64Array;
  readonly cell: Float64Array;
  readonly room: Float64Array;
  readonly held: Uint8Array;
  /** K by which the room is colder than wanted. */
  readonly cold: Float64Array;
  readonly stove: Float64Array;
  /** The largest of what steps' balances miss, as a share of what flowed. */
  readonly residual: Float64Array;
};

/** °C of outdoor air below which the crankcase heater runs while the unit rests, and the pan's while it heats. Source: `offgrid.heaters`. */
const crankcaseBelow = 10;
const panBelow = 2;
/** Share of what a unit could give above which it is not held back. */
const nearly = 0.999;
/** K below what is wanted that a fire is fed for: the unit carries the rest where it can. Source: `offgrid.fire` (common practice). */
const nearlyWarm = 0.5;
/** Hours after a fire for which nobody has the unit cool. Source: `offgrid.fire` (common practice). */
const noCoolingFor = 24;
/** °C at which a stove that does not burn is aimed. */
const unlit = -1e9;
/** Places in what is known of the fire. */
const burning = 0;
const since = 1;
/** Steps since a fire that never was. */
export const noFireYet = 1e6;

/** W beside compressor and fan, by what the unit did the step before. */
function standingAt(loop: PowerLoop, step: number): number {
  const { standby, crankcase, panHeater } = loop.standing;
  const outdoor = loop.weather.outdoor[step]!;
  const ran = loop.state.heat[0]!;
  return (
    standby + (ran === 0 && outdoor < crankcaseBelow ? crankcase : 0) + (ran > 0 && outdoor < panBelow ? panHeater : 0)
  );
}

/** K by which the room with the thermostat is colder than it should be. */
const tooCold = ({ layout, state, wanted }: PowerLoop, step: number): number =>
  wanted[step % layout.stepsPerDay]! - state.t[layout.control.sensor[0]!]!;

/**
 * Lights the stove where it is too cold, never where the unit has its power, and lets it go out once its room asks nothing
 * of it. While it burns it is fed as the room asks, up to its most.
 */
function tendStove(loop: PowerLoop, step: number, row: number): void {
  const { burns, layout, state, wanted, limited } = loop;
  const slot = step % layout.stepsPerDay;
  const needed = burns[burning] === 1 ? state.heat[1]! > 0 : tooCold(loop, step) > loop.lightBelow;
  burns[burning] = limited && needed ? 1 : 0;
  burns[since] = burns[burning] === 1 ? 0 : Math.min(noFireYet, burns[since]! + 1);
  aimHeat(layout, 1, slot, burns[burning] === 1 ? wanted[slot]! - nearlyWarm : unlit);
  limitSystem(layout, state, 1, row, burns[burning] === 1 ? loop.stove : 0, 0);
}

/** Whether the unit stays on heating: while a fire burns, and for a day after it. */
const afterFire = ({ burns, stove }: PowerLoop, hours: number): boolean =>
  stove > 0 && burns[since]! * hours < noCoolingFor;

/** W that the unit draws for what it gives in the step just done. */
function drawn(loop: PowerLoop, row: number): number {
  const heat = loop.state.heat[0]!;
  if (heat > 0) {
    const moment = loop.able.heating[row]!;
    const most = moment.length > 0 ? moment[moment.length - 1]!.capacity : 0;
    return powerFor(moment, Math.min(heat, most)) + Math.max(0, heat - most);
  }
  if (heat === 0) return 0;
  let latent = 0;
  for (let z = 0; z < loop.layout.zones; z++) latent += loop.state.dried[z]! * heatOfVapour;
  return powerFor(loop.able.cooling[row]!, latent - heat);
}

/**
 * One step of the house and its power: what can be had holds the unit back in this very step, then battery and
 * generator serve what all draw. `step` counts in the weather's steps.
 */
function stepTogether(loop: PowerLoop, step: number, record: PowerRecord | undefined): void {
  const { layout, state, weather, able, strips, system, power, flows } = loop;
  const row = Math.floor(step / weather.perRow);
  const hours = weather.stepSeconds / 3600;
  const sun = loop.sun[step]!;
  const household = loop.household[step % loop.household.length]!;
  const standing = standingAt(loop, step);
  const heating = able.heating[row]!;
  const cooling = able.cooling[row]!;
  const byUnit = heating.length > 0 ? heating[heating.length - 1]!.capacity : 0;
  const all = byUnit + strips;
  if (loop.rule !== undefined) loop.raised[step] = raisedBy(loop.rule, step, power, flows, system);
  aimHeat(layout, 0, step % layout.stepsPerDay, loop.wanted[step % layout.stepsPerDay]! + loop.raised[step]!);
  let heat = all;
  let cold = able.sensible[row]!;
  if (loop.limited) {
    const hand = Math.max(0, powerAtHand(system, power, sun, hours) - standing - loop.before * household);
    const forAll = heating.length > 0 ? heating[heating.length - 1]!.power : 0;
    heat = Math.min(all, hand >= forAll ? byUnit + hand - forAll : outputFor(heating, hand));
    const full = cooling.length > 0 ? cooling[cooling.length - 1]!.capacity : 0;
    if (full > 0) cold *= Math.min(1, outputFor(cooling, hand) / full);
  }
  if (loop.stove > 0) tendStove(loop, step, row);
  if (afterFire(loop, hours)) cold = 0;
  limitSystem(layout, state, 0, row, heat, cold);
  stepBuilding(layout, state, weather, step);
  const less = (heat < all && wantsMore(state, 0)) || (cold < able.sensible[row]! && wantsMoreCold(state, 0));
  if (less || loop.burns[burning] === 1) loop.parted[0] = 1;
  const unit = drawn(loop, row);
  const room = state.t[layout.control.sensor[0]!]!;
  const ambient = loop.inside ? room : weather.outdoor[step]!;
  if (loop.limited) stepPower(system, power, flows, sun, household + standing + unit, ambient, hours);
  if (record === undefined) return;
  record.household[step] = household;
  record.unit[step] = unit;
  record.standing[step] = standing;
  record.heat[step] = Math.max(0, state.heat[0]!);
  record.room[step] = room;
  record.held[step] = heat < nearly * all && wantsMore(state, 0) ? 1 : 0;
  record.cold[step] = tooCold(loop, step);
  if (loop.stove > 0) record.stove[step] = state.heat[1]!;
  recordPower(loop, record, step, sun);
}

/** Takes down the flows of the step. */
function recordPower({ flows, power, system }: PowerLoop, record: PowerRecord, step: number, sun: number): void {
  record.refused[step] = flows[powerSlots.sunRefused]!;
  record.used[step] = flows[powerSlots.sunUsed]!;
  record.generator[step] = flows[powerSlots.generated]!;
  record.short[step] = flows[powerSlots.short]!;
  record.out[step] = flows[powerSlots.outOf]!;
  record.heater[step] = flows[powerSlots.heated]!;
  record.lost[step] = flows[powerSlots.lost]!;
  record.charge[step] = power[powerSlots.stored]! / system.battery.energy;
  record.cell[step] = power[powerSlots.cell]!;
  const flow = sun + flows[powerSlots.served]! + flows[powerSlots.outOf]! + 1;
  record.residual[0] = Math.max(record.residual[0]!, Math.abs(flows[powerSlots.residual]!) / flow);
}

/** So many steps from one of the weather's, round the year's end; recorded where a record is given. */
export function runTogether(loop: PowerLoop, from: number, count: number, record?: PowerRecord): void {
  for (let i = 0; i < count; i++) stepTogether(loop, (from + i) % loop.weather.count, record);
}
