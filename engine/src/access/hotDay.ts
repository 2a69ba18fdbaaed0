import type { ResolvedProject } from '@kneewall/project';
import type { ClimateResult } from '../climate/result.ts';
import type { LoadsResult } from '../loads/result.ts';
import { wetBulb } from '../physics/air/index.ts';
import { required, unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import { minutesAnHour, wbgtInside } from './kernels/heat.ts';

type Heat = ResolvedProject['routes']['access']['heat'];

/** K: least rise above outdoors, bulb in an attic's radiation, clothes. Sources: `access.attic-heat`, `access.clothes`. */
const leastRise = 2;
const radiated = 1;
const clothes = { woven: 0, paper: 0.5, double: 3, sealed: 11 } as const;

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
  const roofRise = Math.max(rise, required(loads.attic).sunRise);
  if (!Number.isFinite(rise) || !Number.isFinite(roofRise)) return unresolved('missing', 'house.attic');
  const sun = day.hours.map((h) => h.beamNormal * Math.max(0, Math.cos((h.zenith * Math.PI) / 180)) + h.diffuseLevel);
  const most = Math.max(...sun, 1e-9);
  const share = sun.map((_, h) => Math.max(...[0, 1, 2, 3].map((k) => sun[(h - k + 24) % 24] ?? 0)) / most);
  const means = climate.months.ok ? climate.months.value.map((m) => m.mean) : undefined;
  const plus = clothes[s.choice(heat.clothes)];
  const effort = s.choice(heat.effort);
  const used = s.choice(heat.used) === 'yes';
  return Array.from({ length: 12 }, (_, m) => {
    const colder = means ? Math.min(0, (means[m] ?? 0) - (means[day.month - 1] ?? 0)) : 0;
    return outdoors.map((outdoor, h) => {
      const attic = outdoor + colder + Math.max(leastRise, rise * (share[h] ?? 1));
      const roof = outdoor + colder + Math.max(leastRise, roofRise * (share[h] ?? 1));
      const wet = wetBulb(attic, day.humidityRatio, pressure) + radiated;
      return minutesAnHour(wbgtInside(wet, (attic + roof) / 2) + plus, effort, used);
    });
  });
}
