import type { LogHours } from '@kneewall/project';
import { changePoint, type Interval, studentT } from '../../../physics/fitting/index.ts';
import type { LogBeside, Untold } from './result.ts';

/** Whole days that say what a household uses: three weeks, since weeks are alike and days are not. */
const daysLeast = 21;
/** Share of hours below nothing above which a meter counts what comes and goes. */
const netMost = 0.01;

type Found = Pick<LogBeside, 'household' | 'byWeather'> & { readonly why?: Untold };

/** The house beside the unit, from the whole house's power less the unit's; without the unit's, what follows the weather is parted off. */
export function householdOf({ first, columns }: LogHours): Found {
  const { housePower, unitPower, outdoor } = columns;
  if (!housePower) return {};
  const known = housePower.filter((p) => !Number.isNaN(p));
  if (known.filter((p) => p < -20).length > netMost * known.length) return { why: 'net-meter' };
  if (!unitPower) {
    const found = outdoor && byWeather(housePower, outdoor, first);
    return found ? { byWeather: found } : { why: 'no-unit' };
  }
  const rest = housePower.map((p, h) => p - (unitPower[h] ?? Number.NaN));
  const days = wholeDays(rest, first);
  const daily = days.length >= daysLeast ? meanOfWeeks(days.map((d) => dayMean(rest, d) * kWhOfDay)) : undefined;
  if (!daily) return { why: 'few-days' };
  const hours = Array.from({ length: 24 }, (_, k) => middle(days.map((d) => rest[d + k] ?? 0)));
  return { household: { daily, hours, days: days.length } };
}

const kWhOfDay = 0.024;

/** Where in the hours whole days begin. */
const wholeDays = (x: Float64Array, first: number): readonly number[] => {
  const offset = (24 - (first % 24)) % 24;
  const count = Math.max(0, Math.floor((x.length - offset) / 24));
  return Array.from({ length: count }, (_, d) => offset + 24 * d).filter((from) =>
    x.subarray(from, from + 24).every((v) => !Number.isNaN(v)),
  );
};

const dayMean = (x: Float64Array, from: number): number => x.subarray(from, from + 24).reduce((a, b) => a + b, 0) / 24;

const middle = (x: readonly number[]): number => [...x].sort((a, b) => a - b)[x.length >> 1] ?? Number.NaN;

/** The mean of days, its 90 % interval from the scatter of weeks. */
function meanOfWeeks(days: readonly number[]): Interval | undefined {
  const weeks = Array.from({ length: Math.floor(days.length / 7) }, (_, w) => mean(days.slice(7 * w, 7 * w + 7)));
  if (weeks.length < 3) return undefined;
  const likely = mean(days);
  const centre = mean(weeks);
  const scatter = Math.sqrt(weeks.reduce((a, w) => a + (w - centre) ** 2, 0) / (weeks.length - 1) / weeks.length);
  const half = studentT(0.9, weeks.length - 1) * scatter;
  return { likely, low: likely - half, high: likely + half };
}

const mean = (x: readonly number[]): number => x.reduce((a, b) => a + b, 0) / x.length;

/** kWh a day by the day's outdoor temperature: only where warm days stand beside cold ones, else the point is no more than a guess. */
function byWeather(house: Float64Array, outdoor: Float64Array, first: number) {
  const days = wholeDays(
    house.map((p, h) => p + (outdoor[h] ?? Number.NaN)),
    first,
  );
  const temperatures = days.map((d) => dayMean(outdoor, d));
  const found =
    days.length >= 3 * daysLeast
      ? changePoint(
          temperatures,
          days.map((d) => dayMean(house, d) * kWhOfDay),
        )
      : undefined;
  const warm = found ? temperatures.filter((t) => t > found.point).length : 0;
  return warm >= 14 ? found : undefined;
}
