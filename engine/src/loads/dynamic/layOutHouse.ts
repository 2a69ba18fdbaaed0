import {
  compileBuilding,
  type Ductwork,
  type KeptWalls,
  type Layout,
  type System,
  type WeatherSteps,
} from '../../physics/building/index.ts';
import { buildingOf } from './building.ts';
import type { HouseInputs } from './houseInputs.ts';

/** Weather laid out in steps, and the month of the year, 0 to 12, that each of its rows stands in. */
export type HouseWeather = { readonly steps: WeatherSteps; readonly monthOfRow: Float64Array };

export type LaidOutWith = {
  /** 0 while nobody is at home, 1 as usual. */
  readonly occupied?: number;
  /** Walls worked out before. */
  readonly kept?: KeptWalls;
  readonly ductworks?: readonly Ductwork[];
};

/** A house laid out for its weather. */
export function layOutHouse(
  inputs: HouseInputs,
  weather: HouseWeather,
  systems: readonly System[],
  { occupied = 1, kept = new Map(), ductworks = [] }: LaidOutWith = {},
): Layout {
  const { building, moisture } = buildingOf(inputs, weather.monthOfRow, systems, occupied);
  return compileBuilding({ ...building, ductworks }, weather.steps, moisture, kept);
}
