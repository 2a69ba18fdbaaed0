import type { PowerInputs } from '../../offgrid/result.ts';
import { powerSlots, startPower, stepPower } from '../../physics/power/index.ts';
import type { PowerYearInputs } from './powerYearJob.ts';
import type { PowerRun } from './runWay.ts';
import { systemOf } from './systemOf.ts';

/**
 * The year's demand replayed through other sizes of arrays and battery, each a multiple of what is there: hours of the
 * generator where there is one, else hours in which something goes short. Replayed: the house takes what it takes with
 * all the power it wants, so that it says what a size would spare and not how cold the house gets.
 */
export type PowerSizes = {
  readonly arrays: readonly number[];
  readonly battery: readonly number[];
  /** By battery, then by arrays. */
  readonly hours: readonly (readonly number[])[];
  readonly of: 'generator' | 'short';
};

const multiples = [0.5, 1, 1.5, 2, 3] as const;
/** W that a step may lack before it counts. */
const nothing = 1;

export function powerSizes({ power }: PowerYearInputs, demand: PowerRun): PowerSizes {
  const of = power.generator ? 'generator' : 'short';
  return {
    arrays: multiples,
    battery: multiples,
    of,
    hours: multiples.map((battery) => multiples.map((arrays) => replay(power, demand, arrays, battery))),
  };
}

/** Hours of generator, or of want, with arrays and battery so many times as large. */
function replay(
  power: PowerInputs,
  { record, sun, hours, weather }: PowerRun,
  arrays: number,
  battery: number,
): number {
  const system = systemOf({ ...power, battery: scaledBattery(power.battery, battery) }, true);
  const inside = power.battery.place === 'heated';
  const ambient = inside ? record.room : weather.steps.outdoor;
  const state = startPower(system, 0.6, ambient[0] ?? 0);
  const flows = new Float64Array(powerSlots.flowCount);
  const counted = power.generator ? powerSlots.generated : powerSlots.short;
  let steps = 0;
  for (let i = 0; i < sun.length; i++) {
    const load = (record.household[i] ?? 0) + (record.unit[i] ?? 0) + (record.standing[i] ?? 0);
    stepPower(system, state, flows, (sun[i] ?? 0) * arrays, load, ambient[i] ?? 0, hours);
    if ((flows[counted] ?? 0) > nothing) steps++;
  }
  return steps * hours;
}

export const scaledBattery = (b: PowerInputs['battery'], by: number): PowerInputs['battery'] => ({
  ...b,
  energy: b.energy * by,
  heater: b.heater * by,
  boxLoss: b.boxLoss * by,
  ...(b.chargeMost === undefined ? {} : { chargeMost: b.chargeMost * by }),
  ...(b.dischargeMost === undefined ? {} : { dischargeMost: b.dischargeMost * by }),
});
