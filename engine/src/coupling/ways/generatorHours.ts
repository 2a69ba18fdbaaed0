import type { WeatherYear } from '../../climate/weather/weatherYear.ts';
import { generatorYear } from '../power/generatorYear.ts';
import { powerRuns } from '../power/powerRun.ts';
import type { RunWay } from './ways.ts';
import type { WaysInputs } from './waysJob.ts';

/** Where the unit could stand: what is decided before anything is bought. The other ways differ little from these. */
const places: readonly RunWay[] = ['as-drawn', 'wrapped', 'buried', 'inside', 'rooms'];

/** Hours of the generator in the year that a way comes to; nothing on the grid, without one, or for ways that are not places. */
export function generatorHours(id: RunWay, inputs: WaysInputs, year: WeatherYear): { readonly generator?: number } {
  const { power, standing } = inputs;
  if (!power?.generator || !standing || !places.includes(id)) return {};
  const run = powerRuns({ ...inputs, power, standing }, year).run('with-generator', () => {});
  return { generator: generatorYear(power.generator, run).hours };
}
