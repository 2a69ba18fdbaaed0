import type { ClimateMonth } from '../../climate/result.ts';

/** A task of every season with the day it is first due, and after how many months again; once where that is absent. */
export type Upkeep = { readonly task: string; readonly day: string; readonly everyMonths?: number };

/** °C that a month's mornings come near when the first frost is due. Common practice: `commissioning.upkeep`. */
const frostMorning = 2;

/**
 * When what keeps it going is due, from the last day of free time entered: a look after a week, the filter every month, the
 * first month with frost, then April and October. Without months of the climate the frost is left out. Source: `commissioning.upkeep`.
 */
export function upkeepFrom(last: string, months: readonly ClimateMonth[]): readonly Upkeep[] {
  const [year = 0, month = 0] = last.split('-').map(Number);
  const frost = Array.from({ length: 12 }, (_, i) => month + 1 + i).find((m) => {
    const of = months.find((x) => x.month === ((m - 1) % 12) + 1);
    return of !== undefined && of.mean - of.dailyRange / 2 <= frostMorning;
  });
  const seasons = [4, 10].map((m) => firstOf(m > month ? year : year + 1, m)).sort();
  return [
    { task: 'commissioning/first-week', day: daysAfter(last, 7) },
    { task: 'commissioning/filter', day: daysAfter(last, 30), everyMonths: 1 },
    ...(frost === undefined ? [] : [{ task: 'commissioning/first-frost', day: firstOf(year, frost) }]),
    ...seasons.map((day) => ({ task: 'commissioning/each-season', day, everyMonths: 12 })),
  ];
}

/** The first of a month; months above 12 are the next year's. */
const firstOf = (year: number, month: number): string =>
  new Date(Date.UTC(year, month - 1, 1)).toISOString().slice(0, 10);

const daysAfter = (day: string, days: number): string =>
  new Date(Date.parse(`${day}T00:00:00Z`) + days * 86_400_000).toISOString().slice(0, 10);
