import { daysInMonth, monthStart } from '../../physics/calendar.ts';
import { scatterOf } from '../bins.ts';
import { type Chance, chanceOf } from '../chance.ts';
import type { ClimateMonth, Place, Ties, WintersWeather } from '../result.ts';
import { clearnessOf, type SyntheticDay } from '../syntheticDays.ts';
import { type SunHours, sunHours, yearOfDays } from '../syntheticYear.ts';
import type { WeatherYear } from '../weather/weatherYear.ts';
import { type DayWalk, dayWalk, walkDays } from './dayWalk.ts';
import { tiesOfMonths } from './ties.ts';
import { winterOf } from './winterOf.ts';
import { monthsOfOneYear } from './yearMonths.ts';

/** A place made ready for its winters. */
export type WinterMaker = {
  /** First day of a winter, 0 to 364, and its days: seven months about the coldest. */
  readonly firstDay: number;
  readonly days: number;
  /** The year of winter `n`, from 0. It turns in summer: what stands before that in the calendar comes after in time. */
  readonly year: (n: number) => WeatherYear;
};

/**
 * As many winters of a place as are asked for, each the same for the same seed. Days follow each other by a vector
 * autoregression of warmth, clearness and wind, so that cold, dull and calm spells keep together; months depart from
 * their usual means from year to year. Chosen before drawing real spells anew, since that needs a file of hours, can
 * give no day darker than its darkest, and says nothing where only months are known. Its tails are not validated: how
 * rare its rarest spell is nobody has tested. Source: `climate.winters`.
 */
export function winterMaker({ months, place, ties, seed }: WintersWeather): WinterMaker {
  const own = ties ?? tiesOfMonths(months);
  const walk = dayWalk(own);
  const winter = winterOf(months);
  const hours = sunHours(place);
  return {
    firstDay: monthStart[winter[0] ?? 0] ?? 0,
    days: winter.reduce((sum, m) => sum + (daysInMonth[m] ?? 30), 0),
    year: (n) =>
      winterYear({ months, place, own, walk, hours, turn: ((winter[0] ?? 0) + 10) % 12 }, chanceFor(seed, n)),
  };
}

/** Winters of one seed are streams of their own, so that any one can be made without the others. */
const chanceFor = (seed: number, n: number): Chance => chanceOf(Math.imul(seed + 1, 7919) + Math.imul(n + 1, 104_729));

type Made = {
  readonly months: readonly ClimateMonth[];
  readonly place: Place;
  readonly own: Ties;
  readonly walk: DayWalk;
  readonly hours: SunHours;
  /** The month, 0 to 11, with which a year in order of time begins: two before the winter's first. */
  readonly turn: number;
};

function winterYear({ months, place, own, walk, hours, turn }: Made, chance: Chance): WeatherYear {
  const these = monthsOfOneYear(months, turn, own.now, chance);
  const first = monthStart[turn] ?? 0;
  const inTime = walkDays(walk, 365, chance);
  const scores = Array.from({ length: 365 }, (_, day) => inTime[(day - first + 365) % 365] ?? [0, 0, 0]);
  const days = these.flatMap((m, i) => daysOf(m, i, scores, own, walk, place.latitude));
  const wind = windOfDays(
    these.flatMap((m, i) => dailyWind(m.wind, ofMonth(scores, i, 2), own.gusts, walk.ofMonths[2])),
    chance,
  );
  return { ...yearOfDays(these, place, sharpened(days), wind, hours), name: 'A winter made from twelve months' };
}

/**
 * Days whose means, joined by lines from noon to noon, still come to what they should: the lines lend each day an eighth
 * of either neighbour, which would tie days more closely than weather is.
 */
function sharpened(days: readonly SyntheticDay[]): SyntheticDay[] {
  const wanted = days.map((d) => d.mean);
  const at = (x: readonly number[], d: number): number => x[(d + x.length) % x.length] ?? 0;
  let means = wanted;
  for (let turn = 0; turn < 6; turn++)
    means = means.map((x, d) => x + (wanted[d] ?? 0) - (0.75 * x + 0.125 * (at(means, d - 1) + at(means, d + 1))));
  return days.map((d, i) => ({ ...d, mean: means[i] ?? d.mean }));
}

const ofMonth = (scores: readonly (readonly number[])[], month: number, which: number): number[] =>
  scores.slice(monthStart[month], monthStart[month + 1]).map((s) => s[which] ?? 0);

/** A month's days: warmth about its mean, clearness about its clearness, a wider swing on clear days. */
function daysOf(
  m: ClimateMonth,
  month: number,
  scores: readonly (readonly number[])[],
  own: Ties,
  walk: DayWalk,
  latitude: number,
): SyntheticDay[] {
  const warm = ofMonth(scores, month, 0);
  const off = warm.reduce((a, z) => a + z, 0) / warm.length;
  const clear = ofMonth(scores, month, 1).map((z) => z / Math.sqrt(1 + walk.ofMonths[1]));
  const clearness = clearnessOf(m.clearness, clear, monthStart[month] ?? 0, latitude);
  const swing = clearness.map((k) => 0.55 + (0.45 * k) / Math.max(m.clearness, 0.05));
  const usual = swing.reduce((a, x) => a + x, 0) / swing.length;
  const width = own.scatter * scatterOf(m.mean);
  return warm.map((z, d) => ({
    mean: m.mean + width * (z - off),
    range: (m.dailyRange * (swing[d] ?? 1)) / usual,
    clearness: clearness[d] ?? 0,
  }));
}

/** Daily means of wind, m/s, skewed to the gale as wind is, with the month's mean. */
function dailyWind(mean: number, z: readonly number[], gusts: number, ofMonths: number): number[] {
  const width = Math.sqrt(Math.log1p(gusts ** 2) / (1 + ofMonths));
  const raw = z.map((x) => Math.exp(width * x));
  const scale = (mean * raw.length) / raw.reduce((a, x) => a + x, 0);
  return raw.map((x) => x * scale);
}

/** How far hours of wind lie apart within a day, and how much of one is left in the next. Source: `climate.winters`. */
const hourSpread = 0.35;
const hourTie = 0.85;

/** Hours of wind whose daily means are those given, and where it comes from. */
function windOfDays(daily: readonly number[], chance: Chance): Pick<WeatherYear, 'windSpeed' | 'windDirection'> {
  const windSpeed = new Float64Array(8760);
  const windDirection = new Float64Array(8760);
  let [gust, way] = [chance.normal(), chance.normal()];
  daily.forEach((mean, d) => {
    let sum = 0;
    for (let i = d * 24; i < d * 24 + 24; i++) {
      gust = hourTie * gust + Math.sqrt(1 - hourTie ** 2) * chance.normal();
      way = 0.98 * way + Math.sqrt(1 - 0.98 ** 2) * chance.normal();
      windSpeed[i] = Math.exp(hourSpread * gust);
      windDirection[i] = (((270 + 80 * way) % 360) + 360) % 360;
      sum += windSpeed[i] ?? 0;
    }
    for (let i = d * 24; i < d * 24 + 24; i++) windSpeed[i] = ((windSpeed[i] ?? 0) * mean * 24) / sum;
  });
  return { windSpeed, windDirection };
}
