import { daysInMonth, monthStart } from '../../physics/calendar.ts';
import { extraterrestrialDay, solarConstant } from '../../physics/sun/index.ts';
import { scatterOf } from '../bins.ts';
import type { ClimateMonth, Square, Ties } from '../result.ts';
import { winterOf } from './winterOf.ts';

/** Daily means of a year: °C, m/s, and kWh/m² of sun on the level. */
type Day = { readonly day: number; readonly mean: number; readonly wind: number; readonly sun: number };

const average = (x: readonly number[]): number => x.reduce((a, b) => a + b, 0) / Math.max(x.length, 1);

/** What the winter of an imported year says of how its days hang together. Polar night counts as of even clearness. */
export function tiesOfYear(days: readonly Day[], months: readonly ClimateMonth[], latitude: number): Ties {
  const winter = winterOf(months);
  const columns: ((d: Day) => number)[] = [
    (d) => d.mean,
    (d) => d.sun / Math.max(extraterrestrialDay(latitude, d.day, solarConstant), 0.02),
    (d) => d.wind,
  ];
  const spreads = winter.map((m) => columns.map((of) => spread(monthOf(days, m).map(of))));
  const off = columns.map((of, c) =>
    winter.map((m, i) =>
      monthOf(days, m).map((d) => (of(d) - (spreads[i]?.[c]?.mean ?? 0)) / (spreads[i]?.[c]?.width ?? 1)),
    ),
  );
  const tie = (a: number, b: number, lag: number): number =>
    average(
      (off[a] ?? []).flatMap((month, i) =>
        month.slice(0, month.length - lag).map((x, d) => x * (off[b]?.[i]?.[d + lag] ?? 0)),
      ),
    );
  const square = (lag: number): Square => {
    const one = (a: number, b: number): number => (lag === 0 && a === b ? 1 : tie(a, b, lag));
    const row = (a: number) => [one(a, 0), one(a, 1), one(a, 2)] as const;
    return [row(0), row(1), row(2)];
  };
  const usual = (m: number): number => scatterOf(months[m]?.mean ?? 0);
  return {
    now: square(0),
    next: square(1),
    scatter: average(winter.map((m, i) => (spreads[i]?.[0]?.width ?? 0) / usual(m))),
    gusts: average(spreads.map((s) => (s[2]?.width ?? 0) / Math.max(s[2]?.mean ?? 1, 0.1))),
    range: average(winter.map((m) => months[m]?.dailyRange ?? 0)),
  };
}

const monthOf = (days: readonly Day[], m: number): readonly Day[] =>
  days.slice(monthStart[m] ?? 0, (monthStart[m] ?? 0) + (daysInMonth[m] ?? 30));

function spread(x: readonly number[]): { readonly mean: number; readonly width: number } {
  const mean = average(x);
  return { mean, width: Math.sqrt(average(x.map((v) => (v - mean) ** 2))) || 1 };
}
