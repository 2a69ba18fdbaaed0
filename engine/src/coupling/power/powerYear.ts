import type { WeatherYear } from '../../climate/weather/weatherYear.ts';
import { weatherOfYear } from '../houseYear/table.ts';
import { type PowerYear, powerAnswers } from './powerAnswers.ts';
import { powerRuns, type ReadyRuns } from './powerRun.ts';
import type { PowerYearInputs } from './powerYearJob.ts';

/**
 * House, unit and ducts in their year on their own power: as it is set up, once more without the generator, and with all
 * the power it would take. `tell` hears steps of all runs.
 */
export function powerYear(
  inputs: PowerYearInputs,
  year: WeatherYear,
  tell: (done: number, total: number) => void,
): PowerYear {
  const { run, steps } = powerRuns(inputs, year);
  const runs = inputs.power.generator ? 3 : 2;
  const told = (before: number) => (done: number) => tell(before * steps + done, runs * steps);
  // In this order: where nothing is held back, the second is the first.
  const asSet = run('with-generator', told(0));
  const unlimited = run('unlimited', told(1));
  const alone = inputs.power.generator ? run('without-generator', told(2)) : asSet;
  return powerAnswers(inputs, { asSet, alone, unlimited });
}

/** House, unit and power made ready for a year made from months, for those who run the loop themselves. */
export function powerReady(inputs: PowerYearInputs): ReadyRuns {
  const none = (): never => {
    throw new RangeError('only a year made from months can be made ready without its file');
  };
  return powerRuns(inputs, weatherOfYear(inputs.weather, none));
}
