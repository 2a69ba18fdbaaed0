import type { WeatherYear } from '../../climate/weather/weatherYear.ts';
import { usualCorrections } from '../../equipment/corrections.ts';
import { type HouseInputs, heatingHours } from '../../loads/dynamic/houseInputs.ts';
import { layOutHouse } from '../../loads/dynamic/layOutHouse.ts';
import type { KeptWalls, Layout, System } from '../../physics/building/index.ts';
import { changedDucts, type DuctsInputs, ductwork, thermostatRoom, wholeHouse } from '../ducted/ductworks.ts';
import { houseWeather, runYear, type YearRun, type YearWeatherSteps } from '../houseYear/run.ts';
import { type UnitYear, unitAnswers } from './unitAnswers.ts';
import type { UnitInputs } from './unitInputs.ts';
import { type UnitMoment, type UnitRows, unitMoments } from './unitPower.ts';
import type { UnitYearInputs } from './unitYearJob.ts';

const unitId = 'unit';

/**
 * The house in its year with the unit it has and the ducts that carry its heat: one thermostat, the other rooms follow.
 * Run twice, the second time with ducts that neither leak nor lose, to tell what the ducts cost. `tell` hears rows.
 */
export function unitYear(
  inputs: UnitYearInputs,
  year: WeatherYear,
  tell: (done: number, total: number) => void,
): UnitYear {
  const { able, rows, run } = unitRuns(inputs, year);
  const own = run(inputs.ducts, (done) => tell(done, 2 * rows));
  const twin = run(perfect(inputs.ducts), (done) => tell(rows + done, 2 * rows));
  return unitAnswers(inputs, able, own, twin);
}

/** A house, a unit and a year made ready, to be run with one set of ducts or another. */
export type UnitRuns = {
  readonly able: UnitRows;
  readonly rows: number;
  readonly run: (ducts: DuctsInputs, tell: (done: number) => void) => YearRun;
};

export function unitRuns({ house, unit, step }: UnitYearInputs, year: WeatherYear): UnitRuns {
  const weather = houseWeather(year, Math.min(step, year.stepSeconds), house.horizon);
  const able = unitRows(unit, house.pressure, weather);
  return {
    able,
    rows: weather.monthOfRow.length,
    run: (d, tell) => runWith(house, weather, unit, d, able, tell),
  };
}

/** The same ducts, tight and wrapped in more than any insulation. */
const perfect = (ducts: DuctsInputs): DuctsInputs =>
  changedDucts(ducts, (x) => ({ ...x, insulation: 1e6, leakage: 0 }));

function runWith(
  house: HouseInputs,
  weather: YearWeatherSteps,
  unit: UnitInputs,
  ducts: DuctsInputs,
  able: UnitRows,
  tell: (done: number) => void,
): YearRun {
  return runYear(house, weather, unitLayout(house, weather, unit, ducts, able), tell);
}

/** The house laid out with one unit behind its ducts, and further sources of heat after it; walls may be lent. */
export function unitLayout(
  house: HouseInputs,
  weather: YearWeatherSteps,
  unit: UnitInputs,
  ducts: DuctsInputs,
  able: UnitRows,
  { others = [], kept }: { readonly others?: readonly System[]; readonly kept?: KeptWalls } = {},
): Layout {
  const system: System = {
    id: unitId,
    sensor: thermostatRoom(house),
    shares: {},
    heatTo: heatingHours(house.wanted),
    coolTo: Array.from({ length: 24 }, () => [house.wanted.cooling, house.wanted.cooling] as const),
    heatMost: Float64Array.from(able.heating, (m) => (m.at(-1)?.capacity ?? 0) + unit.strips),
    coolMost: able.sensible,
  };
  const ductworks = [ductwork(house, ducts, wholeHouse(house, unitId))];
  return layOutHouse(house, weather, [system, ...others], { ductworks, ...(kept ? { kept } : {}) });
}

/** What a unit can do in each row of weather. */
export function unitRows(
  { model, outdoorLeast, sensible }: UnitInputs,
  pressure: number,
  weather: YearWeatherSteps,
): UnitRows {
  const { perRow, outdoor } = weather.steps;
  const temperatures = Array.from(weather.monthOfRow, (_, i) => outdoor[i * perRow] ?? 0);
  const coldest = Math.min(...model.rows.filter((r) => r.mode === 'heating').map((r) => r.outdoor));
  const stopped = (t: number): boolean => outdoorLeast !== undefined && t < outdoorLeast;
  const still: UnitMoment = [];
  // The same for every row: found once.
  const corrections = usualCorrections(model);
  const heats = unitMoments(model, 'heating', pressure, corrections);
  const cools = sensible.length > 0 ? unitMoments(model, 'cooling', pressure, corrections) : () => still;
  return {
    heating: temperatures.map((t) => (stopped(t) ? still : heats(t))),
    cooling: temperatures.map(cools),
    sensible: Float64Array.from(temperatures, (t) => onLine(sensible, t)),
    beyond: Uint8Array.from(temperatures, (t) => (t < coldest && !stopped(t) ? 1 : 0)),
  };
}

/** W at an outdoor temperature; hotter or cooler than the sheet, at its nearest row. */
function onLine(line: UnitInputs['sensible'], outdoor: number): number {
  const above = line.findIndex((p) => p.outdoor >= outdoor);
  const upper = line[above] ?? line.at(-1);
  const lower = line[above - 1] ?? upper;
  if (!upper || !lower) return 0;
  const span = upper.outdoor - lower.outdoor;
  return span > 0 ? lower.watts + ((outdoor - lower.outdoor) / span) * (upper.watts - lower.watts) : upper.watts;
}
