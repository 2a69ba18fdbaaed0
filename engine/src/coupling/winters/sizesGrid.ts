import type { PowerInputs } from '../../offgrid/result.ts';
import { generatorSteps, replay, replayDemand, replaySystem, shortSteps } from '../../physics/power/index.ts';
import { scaledBattery } from '../power/powerSizes.ts';
import type { PowerRun } from '../power/runWay.ts';
import { systemOf } from '../power/systemOf.ts';

/** Sizes of arrays and of the battery that are looked at, as multiples of what is there. */
export const multiples = Array.from({ length: 20 }, (_, i) => (i + 1) / 5);

/** How full a battery begins. */
const begins = 0.6;

/**
 * A winter's recorded demand replayed through every size: hours of the generator where there is one, else hours in which
 * something goes short; by battery, then by arrays, one after another. The demand is that of a house given all the power
 * it wants: a flat battery does not cool it here.
 */
export function replayedHours(power: PowerInputs, { record, sun, hours, weather }: PowerRun): number[] {
  const inside = power.battery.place === 'heated';
  const { unit, household, standing } = record;
  const demand = replayDemand(
    {
      sun,
      load: unit.map((w, i) => w + (household[i] ?? 0) + (standing[i] ?? 0)),
      ambient: inside ? record.room : weather.steps.outdoor,
      hours,
    },
    power.inverter,
  );
  const counted = power.generator ? generatorSteps : shortSteps;
  const out = new Float64Array(2);
  return multiples.flatMap((battery) => {
    const own = replaySystem(systemOf({ ...power, battery: scaledBattery(power.battery, battery) }, true), hours);
    return multiples.map((arrays) => {
      replay(own, demand, arrays, begins, out);
      return (out[counted] ?? 0) * hours;
    });
  });
}
