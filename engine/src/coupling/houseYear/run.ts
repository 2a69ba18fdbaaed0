import { rowsOfYear } from '../../climate/rowsOfYear.ts';
import { skyTemperatures } from '../../climate/skyTemperatures.ts';
import type { WeatherYear } from '../../climate/weather/weatherYear.ts';
import { buildingOf } from '../../loads/dynamic/building.ts';
import { startZones } from '../../loads/dynamic/designDays.ts';
import { type HouseInputs, heatingHours, roomSystems } from '../../loads/dynamic/houseInputs.ts';
import { humidityRatio } from '../../physics/air/index.ts';
import {
  compileBuilding,
  type Layout,
  type RowRecord,
  runBuilding,
  type System,
  startState,
  type WeatherSteps,
  weatherSteps,
} from '../../physics/building/index.ts';

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

export type HouseWeather = {
  readonly steps: WeatherSteps;
  readonly monthOfRow: Float64Array;
  readonly rowSeconds: number;
};

/** A weather year laid out for steps of so many seconds. */
export function houseWeather(year: WeatherYear, step: number, horizon: HouseInputs['horizon']): HouseWeather {
  const rows = year.dryBulb.length;
  return {
    steps: weatherSteps(rowsOfYear(year, skyTemperatures(year), horizon), step),
    monthOfRow: Float64Array.from({ length: rows }, (_, i) => (12 * (i + 0.5)) / rows),
    rowSeconds: year.stepSeconds,
  };
}

/** The house laid out for a year, with the systems given. */
export function layOutHouse(inputs: HouseInputs, weather: HouseWeather, systems: readonly System[]): Layout {
  const { wanted } = inputs;
  const { building, moisture } = buildingOf(
    inputs.shell,
    inputs.envelope,
    inputs.leaks,
    {
      people: inputs.people,
      appliances: inputs.appliances,
      driest: humidityRatio({ t: wanted.cooling, rh: wanted.humidity }, inputs.pressure),
    },
    {
      pressure: inputs.pressure,
      groundReflectance: inputs.groundReflectance,
      wave: inputs.wave,
      monthOfRow: weather.monthOfRow,
    },
    systems,
  );
  return compileBuilding(building, weather.steps, moisture);
}

type Tell = (done: number, total: number) => void;

/** The house with a thermostat in each room. */
export const loadedLayout = (inputs: HouseInputs, weather: HouseWeather): Layout =>
  layOutHouse(inputs, weather, roomSystems(inputs.shell, heatingHours(inputs.wanted), inputs.wanted.cooling));

/** As much heat and cold as it takes, room by room. */
export const loadedYear = (inputs: HouseInputs, weather: HouseWeather, tell?: Tell): YearRun =>
  run(inputs, weather, loadedLayout(inputs, weather), tell);

/** The house left to itself. */
export const freeYear = (inputs: HouseInputs, weather: HouseWeather, tell?: Tell): YearRun =>
  run(inputs, weather, layOutHouse(inputs, weather, []), tell);

function run(inputs: HouseInputs, weather: HouseWeather, layout: Layout, tell?: Tell): YearRun {
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
