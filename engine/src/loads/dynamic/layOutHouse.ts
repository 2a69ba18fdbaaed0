import {
  compileBuilding,
  type KeptWalls,
  type Layout,
  type System,
  type WeatherSteps,
} from '../../physics/building/index.ts';
import { buildingOf } from './building.ts';
import type { HouseInputs } from './houseInputs.ts';

/** Weather laid out in steps, and the month of the year, 0 to 12, that each of its rows stands in. */
export type HouseWeather = { readonly steps: WeatherSteps; readonly monthOfRow: Float64Array };

/** A house laid out for its weather. `occupied` is 0 while nobody is at home; `kept` saves working out a wall again. */
export function layOutHouse(
  inputs: HouseInputs,
  weather: HouseWeather,
  systems: readonly System[],
  { occupied = 1, kept = new Map() }: { readonly occupied?: number; readonly kept?: KeptWalls } = {},
): Layout {
  const { building, moisture } = buildingOf(inputs, weather.monthOfRow, systems, occupied);
  return compileBuilding(building, weather.steps, moisture, kept);
}
