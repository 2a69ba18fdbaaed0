import { daysInMonth } from '../physics/calendar.ts';
import { designDayShape } from '../physics/sun/index.ts';
import type { ClimateMonth, TemperatureBin } from './result.ts';

/** K; bins are centred on multiples of it. */
export const binWidth = 3;

/** Seven equally likely departures of a day's mean from its month's, in standard deviations (normal distribution). */
const departures = [-1.4652, -0.7916, -0.3661, 0, 0.3661, 0.7916, 1.4652] as const;

/** Day-to-day scatter of daily means within a month, K, wider in winter. Source: `climate.scatter` (from the files in validation/weather-files). */
export const scatterOf = (mean: number): number => Math.max(2.2, Math.min(6, 4.6 - 0.1 * mean));

/**
 * Hours of a year by outdoor temperature from twelve months: each month's days scattered normally, each day shaped
 * like a design day. It states energy and hours; it says nothing of the one-in-ten winter.
 */
export function binsOfMonths(months: readonly ClimateMonth[]): TemperatureBin[] {
  const hours = new Map<number, number>();
  const shapeMean = designDayShape.reduce((a, b) => a + b, 0) / 24;
  for (const m of months)
    for (const departure of departures)
      for (const below of designDayShape) {
        const t = m.mean + departure * scatterOf(m.mean) + (shapeMean - below) * m.dailyRange;
        add(hours, t, (daysInMonth[m.month - 1] ?? 30) / departures.length);
      }
  return sorted(hours);
}

/** The same from hourly temperatures; `step` is hours a row. */
export function binsOfHours(temperatures: Float64Array, step: number): TemperatureBin[] {
  const hours = new Map<number, number>();
  for (const t of temperatures) add(hours, t, step);
  return sorted(hours);
}

function add(hours: Map<number, number>, t: number, amount: number): void {
  const centre = binWidth * Math.floor((t + binWidth / 2) / binWidth);
  hours.set(centre, (hours.get(centre) ?? 0) + amount);
}

const sorted = (hours: ReadonlyMap<number, number>): TemperatureBin[] =>
  [...hours].map(([centre, h]) => ({ centre, hours: h })).sort((a, b) => a.centre - b.centre);
