import type { WeatherYear } from '../../climate/weather/weatherYear.ts';
import { coldMornings } from './coldMornings.ts';
import { generatorYear } from './generatorYear.ts';
import { powerRuns } from './powerRun.ts';
import type { PowerYearInputs } from './powerYearJob.ts';

/** One thing to change, and what the year then comes to. */
export type PowerHelp = {
  readonly id: 'warm-box' | 'cooler';
  /** Hours of the generator, where there is one, and in which the heat is held back. */
  readonly generator?: number;
  readonly held: number;
  readonly coldMornings: number;
};

/** W/K of a box with 50 mm of foam, and W of the heater in it. Source: `offgrid.warm-box` (common practice). */
export const warmBox = { boxLoss: 2, heater: 150 } as const;
/** K. */
export const cooler = 2;

type Change = { readonly id: PowerHelp['id']; readonly inputs: PowerYearInputs };

/** What is worth trying: a warm box for lithium in the cold that has none, and a lower set point. */
export function changesWorth(inputs: PowerYearInputs): Change[] {
  const { battery } = inputs.power;
  const chilled = battery.place === 'shed' && battery.chemistry !== 'lead-acid' && battery.heater === 0;
  const { wanted } = inputs.house;
  const lower = { ...inputs.house, wanted: { ...wanted, heating: wanted.heating - cooler } };
  const boxed = { ...inputs.power, battery: { ...battery, ...warmBox } };
  return [
    ...(chilled ? [{ id: 'warm-box' as const, inputs: { ...inputs, power: boxed } }] : []),
    { id: 'cooler', inputs: { ...inputs, house: lower } },
  ];
}

/** The year once more with one thing changed. */
export function powerHelp({ id, inputs }: Change, year: WeatherYear, tell: (done: number) => void): PowerHelp {
  const run = powerRuns(inputs, year).run('with-generator', tell);
  const { generator } = inputs.power;
  return {
    id,
    ...(generator ? { generator: generatorYear(generator, run).hours } : {}),
    held: run.record.held.reduce((a, b) => a + b, 0) * run.hours,
    coldMornings: coldMornings(inputs.power.battery, run),
  };
}
