import { type PowerSystem, powerSlots } from '../../physics/power/index.ts';

/**
 * A rule that a thermostat with an eye on the battery and on tomorrow's sun can follow: warmer while sun would be thrown
 * away; a little cooler while the generator carries the house and in the dark before a dark day; the generator rests
 * early where the sun that comes is enough.
 */
export type SetPointRule = {
  /** K by which the house is warmed ahead, and by which it may cool. */
  readonly ahead: number;
  readonly setback: number;
  /** Share of the battery from which the house is warmed ahead, and below which that ends. */
  readonly fullFrom: number;
  readonly fullUntil: number;
  /** Share of the battery at which the generator may rest where sun enough is coming. */
  readonly restAt: number;
  /** W of sun at the bus from which it is day. */
  readonly day: number;
  /** By step of the year: W of sun, and 1 where sun enough is said to come. */
  readonly sun: Float64Array;
  readonly enough: Uint8Array;
  /** 1 while the house is warmed ahead: the rule's own memory. */
  readonly warming: Uint8Array;
};

/** K by which this step is to be warmer than wanted; rests the generator where it may. Reads what the step before left. */
export function raisedBy(
  rule: SetPointRule,
  step: number,
  power: Float64Array,
  flows: Float64Array,
  system: PowerSystem,
): number {
  const share = power[powerSlots.stored]! / system.battery.energy;
  const enough = rule.enough[step] === 1;
  if (enough && share >= rule.restAt) power[powerSlots.running] = 0;
  const runs = power[powerSlots.running] === 1;
  const day = rule.sun[step]! >= rule.day;
  const begins = share >= rule.fullFrom && flows[powerSlots.sunLeft]! > 0;
  const goesOn = rule.warming[0] === 1 && share >= rule.fullUntil;
  rule.warming[0] = day && !runs && (begins || goesOn) ? 1 : 0;
  if (rule.warming[0] === 1) return rule.ahead;
  return runs || (!enough && !day) ? -rule.setback : 0;
}
