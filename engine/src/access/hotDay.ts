import type { ResolvedProject } from '@kneewall/project';
import type { ClimateResult } from '../climate/result.ts';
import type { LoadsResult } from '../loads/result.ts';
import { required, unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import { workerOf } from './atticHeat.ts';
import { workHours } from './kernels/hours.ts';

type Heat = ResolvedProject['routes']['access']['heat'];

/** K of an attic above outdoors at the least. Source: `access.attic-heat`. */
const leastRise = 2;

/**
 * Minutes [12][24] that each hour leaves for work in the attic on a hot day of each month, in solar time: the attic of the
 * hot day's own hours; other months are colder than the hot day's by what their means are. Ends the attempt where attic or
 * hot day are not known.
 */
export function hotDayMinutes(
  heat: Heat,
  { climate, loads }: { readonly climate: ClimateResult; readonly loads: LoadsResult },
  s: Scenario,
): number[][] {
  const day = required(climate.day);
  const pressure = required(climate.pressure);
  const attic = required(loads.atticHours);
  if (attic.some(({ air }) => !Number.isFinite(air))) return unresolved('missing', 'house.attic');
  const means = climate.months.ok ? climate.months.value.map((m) => m.mean) : undefined;
  const worker = workerOf(heat, s);
  return Array.from({ length: 12 }, (_, m) => {
    const colder = means ? Math.min(0, (means[m] ?? 0) - (means[day.month - 1] ?? 0)) : 0;
    const hours = day.hours.map(({ outdoor }, h) => {
      const { air, sunRise } = attic[h] ?? { air: outdoor, sunRise: 0 };
      const warm = Math.max(outdoor + leastRise, air);
      return { air: colder + warm, humidity: day.humidityRatio, roof: colder + Math.max(warm, outdoor + sunRise) };
    });
    return workHours(hours, worker, pressure).map((hour) => hour.minutes);
  });
}
