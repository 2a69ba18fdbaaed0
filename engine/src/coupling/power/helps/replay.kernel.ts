import { type PowerSystem, powerAtHand, powerSlots, stepPower } from '../../../physics/power/index.ts';

/** The demand of a run in which nothing was held back, by step: W, and °C round the battery. */
export type Demand = {
  readonly household: Float64Array;
  readonly unit: Float64Array;
  readonly standing: Float64Array;
  readonly ambient: Float64Array;
  /** Share of the household that is served before the unit. */
  readonly before: number;
};

/** What another power system then does, by step. */
export type Replayed = {
  readonly generator: Float64Array;
  readonly short: Float64Array;
  readonly out: Float64Array;
  readonly cell: Float64Array;
};

/** W that may be lacking of what the unit draws: rounding, not want. */
const nothing = 1e-6;

/**
 * Serves a demand by another system, from one step on, round the year's end; recorded where a record is given. True where
 * the unit has its power in every step: then the house goes as it went, and this is what the whole loop would give.
 */
export function replay(
  system: PowerSystem,
  state: Float64Array,
  flows: Float64Array,
  sun: Float64Array,
  demand: Demand,
  from: number,
  count: number,
  hours: number,
  record?: Replayed,
): boolean {
  let served = true;
  for (let i = 0; i < count; i++) {
    const step = (from + i) % sun.length;
    const unit = demand.unit[step]!;
    const rest = demand.household[step]! + demand.standing[step]!;
    if (unit > 0) {
      const hand = powerAtHand(system, state, sun[step]!, hours);
      if (hand - demand.standing[step]! - demand.before * demand.household[step]! < unit - nothing) served = false;
    }
    stepPower(system, state, flows, sun[step]!, rest + unit, demand.ambient[step]!, hours);
    if (record === undefined) continue;
    record.generator[step] = flows[powerSlots.generated]!;
    record.short[step] = flows[powerSlots.short]!;
    record.out[step] = flows[powerSlots.outOf]!;
    record.cell[step] = state[powerSlots.cell]!;
  }
  return served;
}
