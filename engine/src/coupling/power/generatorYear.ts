import type { GeneratorInputs } from '../../offgrid/result.ts';
import { fuelLines, fuelRate } from '../../physics/power/index.ts';
import type { PowerRun } from './runWay.ts';

/** What a generator does in a year: hours, starts, litres, and hours below the least load it should run at. */
export type GeneratorYear = {
  readonly hours: number;
  readonly starts: number;
  readonly litres: number;
  readonly lowHours: number;
};

/** Reads a run; a start is a step in which it runs after one in which it did not. Source: `power.fuel`. */
export function generatorYear({ rated, fuel, least }: GeneratorInputs, run: PowerRun): GeneratorYear {
  let [steps, starts, litres, low, before] = [0, 0, 0, 0, false];
  for (const watts of run.record.generator) {
    const on = watts > 0;
    if (on) {
      steps++;
      litres += fuelRate(fuelLines[fuel], rated / 1000, watts / 1000) * run.hours;
      if (!before) starts++;
      if (watts < least * rated) low++;
    }
    before = on;
  }
  return { hours: steps * run.hours, starts, litres, lowHours: low * run.hours };
}
