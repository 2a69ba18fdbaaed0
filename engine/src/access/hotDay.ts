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
 * Minutes [12][24] that each hour leaves for work in the attic on a hot day of each month, in solar time. The attic's rise
 * follows the sun of the hour or of one of the three before, whichever was most, up to that of the hot day; other months
 * are colder than the hot day's by what their means are. Ends the attempt where attic or hot day are not known.
 */
export function hotDayMinutes(
  heat: Heat,
  { climate, loads }: { readonly climate: ClimateResult; readonly loads: LoadsResult },
  s: Scenario,
): number[][] {
  const day = required(climate.day);
  const pressure = required(climate.pressure);
  const outdoors = day.hours.map((h) => h.outdoor);
  const rise = Math.max(leastRise, required(loads.atticDay).likely - day.outdoor.likely);
  const roofRise = Math.max(rise, required(loads.atticSunRise));
  if (!Number.isFinite(rise) || !Number.isFinite(roofRise)) return unresolved('missing', 'house.attic');
  const sun = day.hours.map((h) => h.beamNormal * Math.max(0, Math.cos((h.zenith * Math.PI) / 180)) + h.diffuseLevel);
  const most = Math.max(...sun, 1e-9);
  const share = sun.map((_, h) => Math.max(...[0, 1, 2, 3].map((k) => sun[(h - k + 24) % 24] ?? 0)) / most);
  const means = climate.months.ok ? climate.months.value.map((m) => m.mean) : undefined;
  const worker = workerOf(heat, s);
  return Array.from({ length: 12 }, (_, m) => {
    const colder = means ? Math.min(0, (means[m] ?? 0) - (means[day.month - 1] ?? 0)) : 0;
    const above = (outdoor: number, h: number, most: number): number =>
      outdoor + colder + Math.max(leastRise, most * (share[h] ?? 1));
    const hours = outdoors.map((outdoor, h) => ({
      air: above(outdoor, h, rise),
      humidity: day.humidityRatio,
      roof: above(outdoor, h, roofRise),
    }));
    return workHours(hours, worker, pressure).map((hour) => hour.minutes);
  });
}
