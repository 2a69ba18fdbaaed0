import { heatOfVapour } from '../air/index.ts';
import { setCoefficients } from './coefficients.kernel.ts';
import { controlSystems } from './control.kernel.ts';
import type { Layout, State } from './layout.ts';
import { stepMoisture } from './moisture.kernel.ts';
import { finishStep, solveFree } from './step.kernel.ts';
import type { WeatherSteps } from './weatherSteps.ts';

/** One step of the whole building; `step` counts in the weather's steps and wraps round the year. */
export function stepBuilding(l: Layout, s: State, w: WeatherSteps, step: number): void {
  const at = step % l.count;
  if (at % l.perRow === 0) setCoefficients(l, s, w, at);
  solveFree(l, s, w, at);
  controlSystems(l, s, at);
  finishStep(l, s);
  stepMoisture(l, s, w, at);
}

/** Means by row of weather: W of heating and cooling by system, °C and kg/kg by zone, W of vapour taken out by zone. */
export type RowRecord = {
  readonly heating: Float64Array;
  readonly cooling: Float64Array;
  readonly temperature: Float64Array;
  readonly humidity: Float64Array;
  readonly latent: Float64Array;
};

/** Adds a finished step to the means of its row. */
export function recordStep(l: Layout, s: State, record: RowRecord, row: number): void {
  const share = 1 / l.perRow;
  for (let j = 0; j < l.systems; j++) {
    const heat = s.heat[j]! * share;
    const at = row * l.systems + j;
    if (heat > 0) record.heating[at] = record.heating[at]! + heat;
    else record.cooling[at] = record.cooling[at]! - heat;
  }
  for (let z = 0; z < l.zones; z++) {
    const at = row * l.zones + z;
    record.temperature[at] = record.temperature[at]! + s.t[2 * z]! * share;
    record.humidity[at] = record.humidity[at]! + s.humidity[z]! * share;
    record.latent[at] = record.latent[at]! + s.dried[z]! * heatOfVapour * share;
  }
}
