import type { Range } from '@kneewall/project';
import type { ClimateResult } from '../climate/result.ts';
import type { LoadsResult } from '../loads/result.ts';
import { required } from '../plan/outcome.ts';
import { scenario } from '../plan/scenario.ts';
import type { WorkingRecorder } from '../plan/working.ts';
import type { RunInput } from './runInput.ts';
import { roofSun } from './wires/tables.ts';

/** °C inside a house that people live in, at the most. Source: `circuit.air-inside`. */
const insideMost = 30;

export type Upstream = { readonly climate: ClimateResult; readonly loads: LoadsResult };

/** The hottest air along a run, °C: as entered, or by where it goes. Ends the attempt where the climate is not known. */
export function ambientOf(run: RunInput, { climate, loads }: Upstream, recorder: WorkingRecorder): Range {
  if (!('missing' in run.ambient)) {
    recorder.given('t_air', run.ambient);
    const { low, likely, high } = run.ambient;
    return { low, likely, high };
  }
  const air = byPlace(scenario().choice(run.place), climate, loads);
  recorder.step('t_air', 'table', {}, air.range.likely, '°C', air.source);
  return air.range;
}

function byPlace(
  place: 'inside' | 'attic' | 'outdoors' | 'roof',
  climate: ClimateResult,
  loads: LoadsResult,
): { range: Range; source: string } {
  if (place === 'inside')
    return { range: { low: insideMost, likely: insideMost, high: insideMost }, source: 'circuit.air-inside' };
  if (place === 'attic') {
    const { low, likely, high } = required(loads.atticDay);
    // Wires lie there through the year's hottest hour too.
    const most = loads.year.ok ? (loads.year.value.atticMost ?? high) : high;
    return { range: { low, likely, high: Math.max(high, most) }, source: 'circuit.ambient' };
  }
  const { low, likely, high } = required(climate.day).outdoor;
  const more = place === 'roof' ? roofSun : 0;
  return {
    range: { low: low + more, likely: likely + more, high: high + more },
    source: place === 'roof' ? 'circuit.roof' : 'circuit.ambient',
  };
}
