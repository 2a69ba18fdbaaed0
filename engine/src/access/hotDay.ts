import type { ResolvedProject } from '@kneewall/project';
import type { ClimateMonth, ClimateResult } from '../climate/result.ts';
import type { LoadsResult } from '../loads/result.ts';
import { humidityRatio } from '../physics/air/index.ts';
import { required, unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import { workerOf } from './atticHeat.ts';
import { workHours } from './kernels/hours.ts';

type Heat = ResolvedProject['routes']['access']['heat'];

/** K of an attic above outdoors at the least. Source: `access.attic-heat`. */
const leastRise = 2;

/** How the hot day of a month differs from the hottest one's. */
type OtherMonth = {
  /** K, never above 0. */
  readonly colder: number;
  /** Sun on the level, as a share of the hot month's: what the attic and its roof stand above outdoors goes with it. */
  readonly sun: number;
  /** Moisture of the air, as a share of the hot month's. */
  readonly moisture: number;
};

/**
 * Minutes [12][24] that each hour leaves for work in the attic on a hot day of each month, in solar time: the attic of the
 * hot day's own hours. In other months outdoor air is colder by what the means are, and sun and moisture are less by their
 * shares of the months' means, never more. Ends the attempt where attic or hot day are not known.
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
  const months = climate.months.ok ? climate.months.value : undefined;
  const worker = workerOf(heat, s);
  return Array.from({ length: 12 }, (_, m) => {
    const { colder, sun, moisture } = otherMonth(months?.[m], months?.[day.month - 1], pressure);
    const hours = day.hours.map(({ outdoor }, h) => {
      const { air, sunRise } = attic[h] ?? { air: outdoor, sunRise: 0 };
      const rise = Math.max(leastRise, sun * (air - outdoor));
      const cold = outdoor + colder;
      return { air: cold + rise, humidity: moisture * day.humidityRatio, roof: cold + Math.max(rise, sun * sunRise) };
    });
    return workHours(hours, worker, pressure).map((hour) => hour.minutes);
  });
}

function otherMonth(month: ClimateMonth | undefined, hot: ClimateMonth | undefined, pressure: number): OtherMonth {
  if (!month || !hot) return { colder: 0, sun: 1, moisture: 1 };
  const ratioOf = (m: ClimateMonth): number => humidityRatio({ t: m.mean, rh: m.relativeHumidity }, pressure);
  return {
    colder: Math.min(0, month.mean - hot.mean),
    sun: shareOf(month.sun, hot.sun),
    moisture: shareOf(ratioOf(month), ratioOf(hot)),
  };
}

const shareOf = (part: number, whole: number): number => (whole > 0 ? Math.min(1, part / whole) : 1);
