import { rowsOfYear } from '../../climate/rowsOfYear.ts';
import { skyTemperatures } from '../../climate/skyTemperatures.ts';
import type { WeatherYear } from '../../climate/weather/weatherYear.ts';
import { startZones } from '../../loads/dynamic/designDays.ts';
import { type HouseInputs, heatingHours, roomSystems } from '../../loads/dynamic/houseInputs.ts';
import { type HouseWeather, layOutHouse } from '../../loads/dynamic/layOutHouse.ts';
import {
  type Ductwork,
  type Layout,
  type RowRecord,
  runBuilding,
  startState,
  weatherSteps,
} from '../../physics/building/index.ts';
import type { KeptSun } from '../../physics/sun/index.ts';

/** A house run through a year: the record by row of weather, and what its columns are. */
export type YearRun = {
  readonly record: RowRecord;
  readonly zones: readonly string[];
  readonly rooms: readonly string[];
  readonly outdoor: Float64Array;
  readonly rows: number;
  readonly rowSeconds: number;
};

/** Days of the year's end that settle the walls before the year counts. */
const settling = 30;

/** A year of weather for a house, in rows of so many seconds. */
export type YearWeatherSteps = HouseWeather & { readonly rowSeconds: number };

/** A weather year laid out for steps of so many seconds; `kept` saves finding the sun again for another year of the place. */
export function houseWeather(
  year: WeatherYear,
  step: number,
  horizon: HouseInputs['horizon'],
  kept: KeptSun = new Map(),
): YearWeatherSteps {
  const rows = year.dryBulb.length;
  return {
    steps: weatherSteps(rowsOfYear(year, skyTemperatures(year, kept), horizon), step, kept),
    monthOfRow: Float64Array.from({ length: rows }, (_, i) => (12 * (i + 0.5)) / rows),
    rowSeconds: year.stepSeconds,
  };
}

type Tell = (done: number, total: number) => void;

/** The house with a thermostat in each room. */
export const loadedLayout = (
  inputs: HouseInputs,
  weather: YearWeatherSteps,
  ductworks: readonly Ductwork[] = [],
): Layout =>
  layOutHouse(inputs, weather, roomSystems(inputs.shell, heatingHours(inputs.wanted), inputs.wanted.cooling), {
    ductworks,
  });

/** The same house left to itself: walls and sun as they are laid out, no system. */
export const leftAlone = (layout: Layout): Layout => ({ ...layout, systems: 0 });

/** Runs a laid-out house through its year: a house with thermostats takes as much heat and cold as it needs. */
export function runYear(inputs: HouseInputs, weather: YearWeatherSteps, layout: Layout, tell?: Tell): YearRun {
  const outside = weather.steps.outdoor[0] ?? 0;
  const start = startState(layout, {
    inside: inputs.wanted.heating,
    zones: startZones(inputs.wanted.heating, outside),
    outside,
    humidity: 0.006,
  });
  const perDay = 86_400 / weather.rowSeconds;
  const record = runBuilding(layout, start, weather.steps, { warmUp: settling * perDay, ...(tell ? { tell } : {}) });
  const { perRow } = weather.steps;
  return {
    record,
    zones: layout.zoneIds,
    rooms: inputs.shell.rooms.map((r) => r.id),
    outdoor: Float64Array.from({ length: layout.rows }, (_, i) => weather.steps.outdoor[i * perRow] ?? 0),
    rows: layout.rows,
    rowSeconds: weather.rowSeconds,
  };
}
