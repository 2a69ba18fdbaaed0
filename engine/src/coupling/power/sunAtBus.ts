import type { ArrayInputs } from '../../offgrid/result.ts';
import { sunOnPlane } from '../../physics/building/index.ts';
import { monthOfDay } from '../../physics/calendar.ts';
import { addArray, mountings } from '../../physics/power/index.ts';
import type { YearWeatherSteps } from '../houseYear/run.ts';

/** W of all arrays together by step, at the bus that battery and inverter share. */
export function sunAtBus(arrays: readonly ArrayInputs[], weather: YearWeatherSteps, reflectance: number): Float64Array {
  const { steps } = weather;
  const out = new Float64Array(steps.count);
  const freezing = freezingMonths(weather);
  const monthOf = (step: number): number => monthOfDay(Math.floor((step * steps.stepSeconds) / 86_400));
  for (const array of arrays) {
    const light = sunOnPlane(steps.sun, array, reflectance);
    addArray(
      out,
      { ...array, mounting: mountings[array.mounting] },
      {
        ...light,
        east: steps.sun.east,
        north: steps.sun.north,
        up: steps.sun.up,
        air: steps.outdoor,
        wind: (step) => steps.wind[Math.floor(step / steps.perRow)] ?? 0,
        snow: (step) => (freezing[monthOf(step)] ? array.snow : 0),
      },
    );
  }
  return out;
}

/** Months whose mean outdoor air is below freezing. */
function freezingMonths({ steps }: YearWeatherSteps): readonly boolean[] {
  const sums = new Float64Array(12);
  for (let i = 0; i < steps.count; i++) {
    const month = monthOfDay(Math.floor((i * steps.stepSeconds) / 86_400));
    sums[month] = (sums[month] ?? 0) + (steps.outdoor[i] ?? 0);
  }
  return [...sums].map((sum) => sum < 0);
}
