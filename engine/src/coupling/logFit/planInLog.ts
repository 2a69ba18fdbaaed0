import type { WeatherYear } from '../../climate/weather/weatherYear.ts';
import type { HouseLog } from '../../commissioning/logs/logHours.ts';
import type { PlannedHouse } from '../../commissioning/logs/logJob.ts';
import { waveOf } from '../../loads/dynamic/ground.ts';
import { houseInputs } from '../../loads/dynamic/houseInputs.ts';
import { scenario } from '../../plan/scenario.ts';
import { houseWeather, loadedLayout, runYear, type YearRun } from '../houseYear/run.ts';
import { weatherOfLog } from './weatherOfLog.ts';

/** Nobody cools in a log of heating: what is heated is all that is given. */
const neverCooled = 60;
const hourSeconds = 3600;

/**
 * The hours of a log as the plan's own house would have written them: its heat balance in the log's weather, kept as warm
 * as the log's house. Hours that the log lacks are lacking here too, so that both are fitted to the same days.
 */
export function planInLog(log: HouseLog, { house, site, pressure, months }: PlannedHouse, year: WeatherYear): HouseLog {
  const own = houseInputs({ ...house, learned: nothingLearned }, site, pressure, waveOf(months), scenario());
  const wanted = { ...own.wanted, heating: meanOf(log.indoor, own.wanted.heating), setback: 0, cooling: neverCooled };
  const inputs = { ...own, wanted };
  const { weather, hourOf } = weatherOfLog(log, year);
  const laid = houseWeather(weather, hourSeconds, inputs.horizon);
  const run = runYear(inputs, laid, loadedLayout(inputs, laid));
  const areas = inputs.shell.rooms.map((r) => r.floorArea);
  const hours = houseHours(run, areas);
  const at = (x: Float64Array, like: Float64Array): Float64Array =>
    like.map((known, h) => (Number.isNaN(known) ? Number.NaN : (x[hourOf(h)] ?? Number.NaN)));
  const indoor = at(hours.indoor, log.indoor);
  return {
    first: log.first,
    outdoor: log.outdoor,
    indoor,
    ends: indoor,
    heat: at(hours.heat, log.heat),
    heatFrom: 'meter',
    ...(log.sun ? { sun: log.sun } : {}),
    ...(log.wind ? { wind: log.wind } : {}),
  };
}

const nothing = (path: string) => ({ path, missing: true }) as const;
const nothingLearned = {
  log: undefined,
  from: undefined,
  to: undefined,
  accepted: undefined,
  loss: nothing('house.learned.loss'),
  lossPerDegree: nothing('house.learned.lossPerDegree'),
};

/** W of heat, and °C as a mean by floor area, hour by hour of the year. */
function houseHours({ record, rooms, zones, rows, rowSeconds }: YearRun, areas: readonly number[]) {
  const perHour = hourSeconds / rowSeconds;
  const all = areas.reduce((a, b) => a + b, 0);
  const columns = rooms.map((r) => zones.indexOf(r));
  const heat = new Float64Array(rows / perHour);
  const indoor = new Float64Array(rows / perHour);
  for (let row = 0; row < rows; row++) {
    const h = Math.floor(row / perHour);
    columns.forEach((column, k) => {
      heat[h] = (heat[h] ?? 0) + (record.heating[row * rooms.length + k] ?? 0) / perHour;
      const t = record.temperature[row * zones.length + column] ?? 0;
      indoor[h] = (indoor[h] ?? 0) + (t * (areas[k] ?? 0)) / all / perHour;
    });
  }
  return { heat, indoor };
}

function meanOf(x: Float64Array, without: number): number {
  const known = x.filter((v) => !Number.isNaN(v));
  return known.length > 0 ? known.reduce((a, b) => a + b, 0) / known.length : without;
}
