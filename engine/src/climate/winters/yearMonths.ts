import type { Chance } from '../chance.ts';
import type { ClimateMonth, Square } from '../result.ts';
import { tiedEvenly, walkDays } from './dayWalk.ts';

/** Share of a month's departure that goes over into the next month's. Source: `climate.year-to-year` (common practice). */
const overMonths = 0.3;
/** Spread from year to year of a month's clearness and wind, as shares of them. Source: `climate.year-to-year` (common practice). */
const clearSpread = 0.1;
const windSpread = 0.12;

/**
 * Spread from year to year of a month's mean temperature, K, of its mean and the spread of the twelve means
 * (Erbs, Klein and Beckman 1983). Source: `climate.monthly-spread`.
 */
export const monthlySpread = (mean: number, ofYear: number): number =>
  Math.max(0.3, 1.45 - 0.029 * mean + 0.0664 * ofYear);

/**
 * The months of one year: each month's mean temperature, clearness and wind depart from what they are given to be, all
 * tied as days are, a month a little to the next. In order of time from month `first`, 0 to 11.
 */
export function monthsOfOneYear(
  months: readonly ClimateMonth[],
  first: number,
  now: Square,
  chance: Chance,
): ClimateMonth[] {
  const all = months.reduce((a, m) => a + m.mean, 0) / months.length;
  const ofYear = Math.sqrt(months.reduce((a, m) => a + (m.mean - all) ** 2, 0) / months.length);
  const departures = walkDays(tiedEvenly(now, overMonths), months.length, chance);
  const out = [...months];
  departures.forEach(([warm = 0, clear = 0, wind = 0], i) => {
    const at = (first + i) % months.length;
    const m = months[at];
    if (!m) return;
    const clearness = Math.max(0.08, Math.min(0.78, m.clearness * (1 + clearSpread * within(clear))));
    out[at] = {
      ...m,
      mean: m.mean + monthlySpread(m.mean, ofYear) * warm,
      clearness,
      sun: m.clearness > 0 ? (m.sun * clearness) / m.clearness : 0,
      wind: m.wind * (1 + windSpread * within(wind)),
    };
  });
  return out;
}

/** Departures in spreads, so that no month turns round. */
const within = (z: number): number => Math.max(-3, Math.min(3, z));
