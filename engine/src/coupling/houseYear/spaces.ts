import { daysInMonth } from '../../physics/calendar.ts';

/** Hours without a break below 0 °C: the hour of the year it begins in, how many, and kelvin hours below 0 °C. */
export type Freeze = { readonly from: number; readonly hours: number; readonly kelvinHours: number };

/** How one space freezes through a year. °C, hours; the hardest stretches, by kelvin hours, first. */
export type Frosts = {
  readonly hours: number;
  readonly lowest: number;
  readonly longest: number;
  readonly hardest: readonly Freeze[];
};

/** Stretches that are kept. */
const kept = 12;

/**
 * Stretches below 0 °C in a year of hourly means, °C; its end is followed by its beginning, so that no winter is cut in
 * two. A year that never thaws is one stretch.
 */
export function frostsOf(hourly: ArrayLike<number>): Frosts {
  const n = hourly.length;
  const at = (i: number): number => hourly[i % n] ?? 0;
  let start = 0;
  while (start < n && at(start) < 0) start++;
  const stretches: Freeze[] = [];
  if (start === n && n > 0) stretches.push({ from: 0, hours: n, kelvinHours: -total(hourly, 0, n) });
  for (let i = start; i < start + n && start < n; i++) {
    if (at(i) >= 0) continue;
    const from = i;
    while (i < start + n && at(i) < 0) i++;
    stretches.push({ from: from % n, hours: i - from, kelvinHours: -total(hourly, from, i) });
  }
  let lowest = Number.POSITIVE_INFINITY;
  for (let i = 0; i < n; i++) lowest = Math.min(lowest, at(i));
  return {
    hours: stretches.reduce((sum, s) => sum + s.hours, 0),
    lowest,
    longest: stretches.reduce((most, s) => Math.max(most, s.hours), 0),
    hardest: stretches.toSorted((a, b) => b.kelvinHours - a.kelvinHours || a.from - b.from).slice(0, kept),
  };
}

function total(hourly: ArrayLike<number>, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += hourly[i % hourly.length] ?? 0;
  return sum;
}

/** By month and hour of the day, the value that a share of the month's days stays below; values in a year by the hour. */
export function dayShares(hourly: ArrayLike<number>, share: number): number[][] {
  let day = 0;
  return daysInMonth.map((days) => {
    const first = day;
    day += days;
    return Array.from({ length: 24 }, (_, hour) => {
      const values = Array.from({ length: days }, (_, d) => hourly[(first + d) * 24 + hour] ?? 0).sort((a, b) => a - b);
      return values[Math.min(days - 1, Math.floor(share * days))] ?? 0;
    });
  });
}

/** Means of whole hours of values by row of so many seconds. */
export function hourlyMeans(at: (row: number) => number, rows: number, rowSeconds: number): Float64Array {
  const perHour = Math.max(1, Math.round(3600 / rowSeconds));
  return Float64Array.from({ length: Math.floor(rows / perHour) }, (_, hour) => {
    let sum = 0;
    for (let i = 0; i < perHour; i++) sum += at(hour * perHour + i);
    return sum / perHour;
  });
}
