import { daysInMonth, monthStart } from '../physics/calendar.ts';
import { extraterrestrialDay, solarConstant } from '../physics/sun/index.ts';
import { scatterOf } from './bins.ts';
import { type Chance, normalShare } from './chance.ts';
import type { ClimateMonth } from './result.ts';

/** A made day: mean °C, range K, share of the extraterrestrial sun that arrives. */
export type SyntheticDay = { readonly mean: number; readonly range: number; readonly clearness: number };

/** Day-to-day correlation of clearness, before each month's mean is taken out. Source: `climate.persistence`. */
const clearTie = 0.42;
/** The same of temperature: where the sea keeps days and nights alike it keeps one day like the next. Source: `climate.persistence`. */
const warmTie = (months: readonly ClimateMonth[]): number => {
  const range = months.reduce((a, m) => a + m.dailyRange, 0) / 12;
  return Math.max(0.5, Math.min(0.85, 0.86 - 0.019 * range));
};
/** How far a clear day is colder in winter and warmer in summer, as a correlation. Source: `climate.persistence`. */
const clearAndCold = 0.3;

/** 365 days whose monthly means of temperature, range and clearness are those given. */
export function syntheticDays(months: readonly ClimateMonth[], latitude: number, chance: Chance): SyntheticDay[] {
  const yearMean = months.reduce((a, m) => a + m.mean, 0) / 12;
  const half = Math.max(...months.map((m) => Math.abs(m.mean - yearMean)), 1e-9);
  const sky = wave(chance, clearTie);
  const air = wave(chance, warmTie(months));
  return months.flatMap((m, i) => {
    const first = monthStart[i] ?? 0;
    const days = daysInMonth[i] ?? 30;
    const clearness = clearnessOf(m.clearness, sky.slice(first, first + days), first, latitude);
    const season = (m.mean - yearMean) / half;
    const departures = Array.from({ length: days }, (_, d) => {
      const tied = clearAndCold * season;
      return (tied * (sky[first + d] ?? 0) + Math.sqrt(1 - tied * tied) * (air[first + d] ?? 0)) * scatterOf(m.mean);
    });
    const off = departures.reduce((a, d) => a + d, 0) / days;
    const swing = clearness.map((k) => 0.55 + (0.45 * k) / Math.max(m.clearness, 0.05));
    const usual = swing.reduce((a, x) => a + x, 0) / days;
    return departures.map((d, j) => ({
      mean: m.mean + d - off,
      range: (m.dailyRange * (swing[j] ?? 1)) / usual,
      clearness: clearness[j] ?? 0,
    }));
  });
}

/** A year of numbers of spread 1, each tied to the one before. */
function wave(chance: Chance, tie: number): number[] {
  const out: number[] = [];
  let last = chance.normal();
  for (let d = 0; d < 365; d++) {
    last = tie * last + Math.sqrt(1 - tie * tie) * chance.normal();
    out.push(last);
  }
  return out;
}

const least = 0.05;

/**
 * Clearness of a month's days from numbers of a normal distribution, by the distribution of Bendt, Collares-Pereira &
 * Rabl 1981, moved until the sun of the month is what its clearness says. Polar night has none to move.
 */
export function clearnessOf(mean: number, z: readonly number[], first: number, latitude: number): number[] {
  const above = z.map((_, d) => extraterrestrialDay(latitude, first + d + 1, solarConstant));
  const all = above.reduce((a, x) => a + x, 0);
  const most = 0.6313 + 0.267 * mean - 11.9 * (mean - 0.75) ** 8;
  const inside = Math.max(least + 0.02, Math.min(most - 0.02, mean));
  const steepness = steepnessFor(inside, most);
  const days = (shift: number): number[] => z.map((x) => quantile(normalShare(x + shift), most, steepness));
  if (all <= 0) return days(0);
  const wanted = mean * all;
  const sunOf = (shift: number): number => days(shift).reduce((a, k, d) => a + k * (above[d] ?? 0), 0);
  const found = days(bisect((shift) => sunOf(shift) - wanted, -6, 6));
  // A mean outside what days can have is met by scaling them.
  const scale = wanted / found.reduce((a, k, d) => a + k * (above[d] ?? 0), 0);
  return found.map((k) => k * scale);
}

/** Clearness that a share of the days lies below: density grows as exp(steepness × clearness) between least and most. */
const quantile = (share: number, most: number, g: number): number =>
  Math.abs(g) < 1e-6
    ? least + share * (most - least)
    : least + Math.log(1 + share * Math.expm1(g * (most - least))) / g;

const steepnessFor = (mean: number, most: number): number => bisect((g) => meanOf(g, most) - mean, -60, 60);

function meanOf(g: number, most: number): number {
  const span = most - least;
  if (Math.abs(g * span) < 1e-6) return least + span / 2;
  return g > 0 ? most - 1 / g + span / Math.expm1(g * span) : least - 1 / g - span / Math.expm1(-g * span);
}

/** Where a rising function crosses zero, to 1e-10 of the interval. */
export function bisect(f: (x: number) => number, low: number, high: number): number {
  let [a, b] = [low, high];
  for (let i = 0; i < 60; i++) {
    const middle = (a + b) / 2;
    if (f(middle) < 0) a = middle;
    else b = middle;
  }
  return (a + b) / 2;
}
