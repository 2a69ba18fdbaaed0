import type { LogHours } from '@kneewall/project';
import { changePoint, type Interval, leastSquares, studentT } from '../../../physics/fitting/index.ts';
import type { LogBeside, Untold } from './result.ts';

/** Whole days that say what a household uses: three weeks, since weeks are alike and days are not. */
const daysLeast = 21;
/** Share of hours below nothing above which a meter counts what comes and goes. */
const netMost = 0.01;
/** A week is much like the one before, so that their scatter tells too little; what two clamps are off by, as a share; and what the
 * part of a year that was not logged may differ by. Source: `commissioning.log-beside`. */
const alike = 1.5;
const meters = 0.04;
const otherSeasons = 0.15;
/** A use that rises with the cold, beyond chance (t) and by this share from the log's mild days to its cold ones, heats. */
const follows = { t: 3, share: 0.1 } as const;

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
  // Two meters’ scatter may leave a quiet hour a little below nothing, which no house uses.
  const hours = Array.from({ length: 24 }, (_, k) => Math.max(0, middle(days.map((d) => rest[d + k] ?? 0))));
  return { household: { daily, hours, days: days.length, heats: outdoor ? followsCold(rest, outdoor, days) : false } };
}

/** Whether the rest heats too: it rises with a cold day, the season's own swing apart. */
function followsCold(rest: Float64Array, outdoor: Float64Array, days: readonly number[]): boolean {
  const known = days.filter((d) => !Number.isNaN(dayMean(outdoor, d)));
  const ofYear = known.map((d) => (2 * Math.PI * d) / hoursOfYear);
  const cold = known.map((d) => -dayMean(outdoor, d));
  const used = known.map((d) => dayMean(rest, d));
  const fit = leastSquares([cold, used.map(() => 1), ofYear.map(Math.cos), ofYear.map(Math.sin)], used);
  const [slope = 0, error = Number.POSITIVE_INFINITY] = [fit?.coefficients[0], fit?.standardErrors[0]];
  const sorted = [...cold].sort((a, b) => a - b);
  const spread = (sorted[Math.floor(0.95 * sorted.length)] ?? 0) - (sorted[Math.floor(0.05 * sorted.length)] ?? 0);
  return slope > follows.t * error && slope * spread > follows.share * mean(used);
}

const kWhOfDay = 0.024;
const hoursOfYear = 8766;

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

/** The mean of days, its 90 % interval for a year's mean: from the scatter of weeks, the meters, and what was not logged of the year. */
function meanOfWeeks(days: readonly number[]): Interval | undefined {
  const weeks = Array.from({ length: Math.floor(days.length / 7) }, (_, w) => mean(days.slice(7 * w, 7 * w + 7)));
  if (weeks.length < 3) return undefined;
  const likely = mean(days);
  const centre = mean(weeks);
  const scatter = Math.sqrt(weeks.reduce((a, w) => a + (w - centre) ** 2, 0) / (weeks.length - 1) / weeks.length);
  const unlogged = otherSeasons * Math.max(0, 1 - days.length / 365);
  const half = Math.hypot(alike * studentT(0.9, weeks.length - 1) * scatter, meters * likely, unlogged * likely);
  return { likely, low: Math.max(0, likely - half), high: likely + half };
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
