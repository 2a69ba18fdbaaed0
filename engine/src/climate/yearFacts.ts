import { monthOfDay, monthStart } from '../physics/calendar.ts';
import { firstHarmonic } from '../physics/firstHarmonic.ts';
import { extraterrestrialDay, solarConstant } from '../physics/sun/index.ts';
import type { ClimateMonth, YearFacts } from './result.ts';
import type { WeatherYear } from './weather/weatherYear.ts';

/** Design percentiles, the coldest day, the darkest ten days, and how cold and dark go together. */
export function factsOfYear(year: WeatherYear): YearFacts {
  const sorted = Float64Array.from(year.dryBulb).sort();
  const n = sorted.length;
  const exceeded = (share: number): number => sorted[Math.max(0, Math.min(n - 1, n - 1 - Math.round(share * n)))] ?? 0;
  const days = dailyRows(year);
  const coldest = days.reduce((a, b) => (b.mean < a.mean ? b : a));
  return {
    rows: n,
    heating996: exceeded(0.996),
    heating99: exceeded(0.99),
    cooling004: exceeded(0.004),
    cooling01: exceeded(0.01),
    cooling02: exceeded(0.02),
    degreeDays: degreeDays(year),
    longestDull: longestDull(days, year.latitude),
    ground: groundWave(days),
    coldestDay: { day: coldest.day, mean: coldest.mean },
    darkestTenDays: darkest(days, 10),
    coldAndDark: coldAndDark(days),
  };
}

/** °C below which a house is heated and above which it is cooled, as degree-days are counted: 65 °F. */
export const degreeDayBase = 65 / 1.8 - 160 / 9;

/** K days of a year's hours below and above the base. */
function degreeDays(year: WeatherYear): YearFacts['degreeDays'] {
  const days = year.stepSeconds / 86_400;
  const sum = (off: (t: number) => number): number => year.dryBulb.reduce((a, t) => a + Math.max(0, off(t)), 0) * days;
  return { heating: sum((t) => degreeDayBase - t), cooling: sum((t) => t - degreeDayBase) };
}

/** The longest run of days with less than half of their month's sun; it may run over the end of the year. */
function longestDull(days: readonly Day[], latitude: number): number {
  const clearness = days.map((d) => {
    const above = extraterrestrialDay(latitude, d.day, solarConstant);
    return above > 0 ? d.sun / above : 0;
  });
  const dull = clearness.map((k, d) => {
    const month = monthOfDay(d);
    const here = clearness.slice(monthStart[month], monthStart[month + 1]);
    return k < (0.5 * here.reduce((a, b) => a + b, 0)) / here.length;
  });
  let longest = 0;
  let run = 0;
  for (let i = 0; i < 2 * dull.length; i++) {
    run = dull[i % dull.length] ? run + 1 : 0;
    longest = Math.max(longest, Math.min(run, dull.length));
  }
  return longest;
}

/** The year's wave at the surface, which goes down into the ground: first harmonic of the daily means. Source: `ground.kusuda`. */
function groundWave(days: readonly Day[]): YearFacts['ground'] {
  const { mean: average, amplitude, lowest } = firstHarmonic(days.map((d) => d.mean));
  return { mean: average, amplitude, coldestDay: days.length * lowest };
}

type Day = {
  readonly day: number;
  readonly mean: number;
  readonly range: number;
  readonly sun: number;
  readonly rh: number;
  readonly wind: number;
};

export function dailyRows(year: WeatherYear): Day[] {
  const perDay = Math.round(86_400 / year.stepSeconds);
  return Array.from({ length: Math.floor(year.dryBulb.length / perDay) }, (_, d) => {
    const part = (x: Float64Array) => x.subarray(d * perDay, (d + 1) * perDay);
    const t = part(year.dryBulb);
    return {
      day: d + 1,
      mean: mean(t),
      range: t.reduce((a, b) => Math.max(a, b), -1e9) - t.reduce((a, b) => Math.min(a, b), 1e9),
      sun: (mean(part(year.ghi)) * 24) / 1000,
      rh: mean(part(year.relativeHumidity)),
      wind: mean(part(year.windSpeed)),
    };
  });
}

const mean = (x: Float64Array): number => x.reduce((a, b) => a + b, 0) / x.length;

function darkest(days: readonly Day[], span: number): { day: number; sun: number } {
  let best = { day: 1, sun: Number.POSITIVE_INFINITY };
  for (let i = 0; i + span <= days.length; i++) {
    const sun = days.slice(i, i + span).reduce((a, d) => a + d.sun, 0);
    if (sun < best.sun) best = { day: i + 1, sun };
  }
  return best;
}

/** Rank correlation of cold with darkness over the coldest quarter of the days. */
function coldAndDark(days: readonly Day[]): number {
  const cold = [...days].sort((a, b) => a.mean - b.mean || a.day - b.day).slice(0, Math.ceil(days.length / 4));
  const rank = (key: (d: Day) => number) => {
    const order = [...cold].sort((a, b) => key(a) - key(b) || a.day - b.day);
    return cold.map((d) => order.indexOf(d));
  };
  const [a, b] = [rank((d) => d.mean), rank((d) => d.sun)];
  const n = cold.length;
  const squares = a.reduce((sum, x, i) => sum + (x - (b[i] ?? 0)) ** 2, 0);
  return 1 - (6 * squares) / (n * (n * n - 1));
}

export function monthsOfYear(year: WeatherYear): ClimateMonth[] {
  const days = dailyRows(year);
  return Array.from({ length: 12 }, (_, i) => {
    const here = days.slice(monthStart[i], monthStart[i + 1]);
    const avg = (f: (d: Day) => number) => here.reduce((a, d) => a + f(d), 0) / here.length;
    const above = here.reduce((a, d) => a + extraterrestrialDay(year.latitude, d.day, solarConstant), 0) / here.length;
    const sun = avg((d) => d.sun);
    return {
      month: i + 1,
      mean: avg((d) => d.mean),
      dailyRange: avg((d) => d.range),
      relativeHumidity: avg((d) => d.rh),
      wind: avg((d) => d.wind),
      clearness: sun / above,
      sun,
    };
  });
}
