import type { WeatherYear } from '../../climate/weather/weatherYear.ts';
import type { UnitModel } from '../../equipment/result.ts';
import { unitAt } from '../../equipment/unitAt.ts';
import { type HouseInputs, heatingHours } from '../../loads/dynamic/houseInputs.ts';
import { layOutHouse } from '../../loads/dynamic/layOutHouse.ts';
import { humidityRatio } from '../../physics/air/index.ts';
import type { System } from '../../physics/building/index.ts';
import { required } from '../../plan/outcome.ts';
import { changedDucts, type DuctsInputs, ductwork, thermostatRoom, wholeHouse } from '../ducted/ductworks.ts';
import { houseWeather, runYear, type YearRun, type YearWeatherSteps } from '../houseYear/run.ts';
import { type UnitYear, unitAnswers } from './unitAnswers.ts';
import type { UnitInputs } from './unitInputs.ts';
import { type UnitMoment, type UnitRows, unitMoment } from './unitPower.ts';
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
  const { house, unit, ducts } = inputs;
  const weather = houseWeather(year, Math.min(inputs.step, year.stepSeconds), house.horizon);
  const rows = weather.monthOfRow.length;
  const able = unitRows(unit, ducts, house, weather);
  const run = (d: DuctsInputs, from: number): YearRun =>
    runWith(house, weather, unit, d, able, (done) => tell(from + done, 2 * rows));
  return unitAnswers(inputs, able, run(ducts, 0), run(perfect(ducts), rows));
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
  const sensor = thermostatRoom(house) ?? '';
  const system: System = {
    id: unitId,
    sensor,
    shares: {},
    heatTo: heatingHours(house.wanted),
    coolTo: Array.from({ length: 24 }, () => [house.wanted.cooling, house.wanted.cooling] as const),
    heatMost: Float64Array.from(able.heating, (m) => (m.at(-1)?.capacity ?? 0) + unit.strips),
    coolMost: able.sensible,
  };
  const ductworks = [ductwork(house, ducts, wholeHouse(house, unitId))];
  const layout = layOutHouse(house, weather, [system], { ductworks });
  return runYear(house, weather, layout, tell);
}

function unitRows(
  { model, outdoorLeast }: UnitInputs,
  { flows }: DuctsInputs,
  { wanted, pressure }: HouseInputs,
  weather: YearWeatherSteps,
): UnitRows {
  const { perRow, outdoor } = weather.steps;
  const temperatures = Array.from(weather.monthOfRow, (_, i) => outdoor[i * perRow] ?? 0);
  const cools = model.rows.some((r) => r.mode === 'cooling' && r.speed === 'most');
  const coldest = Math.min(...model.rows.filter((r) => r.mode === 'heating').map((r) => r.outdoor));
  const stopped = (t: number): boolean => outdoorLeast !== undefined && t < outdoorLeast;
  const still: UnitMoment = [];
  return {
    heating: temperatures.map((t) => (stopped(t) ? still : unitMoment(model, 'heating', t, pressure))),
    cooling: temperatures.map((t) => (cools ? unitMoment(model, 'cooling', t, pressure) : still)),
    sensible: Float64Array.from(temperatures, (t) =>
      cools ? sensibleMost(model, t, wanted, flows.flow, pressure) : 0,
    ),
    beyond: Uint8Array.from(temperatures, (t) => (t < coldest && !stopped(t) ? 1 : 0)),
  };
}

/** Sensible cooling at the most, W, with air as it is wanted indoors; hotter or cooler than the sheet, at its nearest row. */
function sensibleMost(
  model: UnitModel,
  outdoor: number,
  wanted: HouseInputs['wanted'],
  flow: number,
  pressure: number,
): number {
  const rows = model.rows.filter((r) => r.mode === 'cooling' && r.speed === 'most').map((r) => r.outdoor);
  const at = Math.max(Math.min(...rows), Math.min(Math.max(...rows), outdoor));
  const enteringHumidity = humidityRatio({ t: wanted.cooling, rh: wanted.humidity }, pressure);
  return required(
    unitAt(model, {
      mode: 'cooling',
      outdoor: at,
      entering: wanted.cooling,
      enteringHumidity,
      flow,
      pressure,
      speed: 'most',
    }),
  ).sensible;
}
