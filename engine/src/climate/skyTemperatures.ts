import {
  clarkAllenEmittance,
  cloudFactor,
  cloudOfDiffuse,
  type KeptSun,
  keptColumn,
  skyTemperature,
  stefanBoltzmann,
} from '../physics/sun/index.ts';
import { sunHeights, type YearClock } from './weather/sunHeights.ts';
import type { WeatherYear } from './weather/weatherYear.ts';

/** Of the day's greatest height of the sun: below it a long way through the air looks like cloud. Source: `sky.cloud-carried`. */
const heightLeast = 0.5;
/** Cover where a year holds no sun at all. Source: `sky.cloud-carried`. */
const coverUnknown = 0.5;

/**
 * Temperature of the sky for each row of a year, °C: from the heat the sky sends where the year states it; else by
 * Clark and Allen from the dew point with the year's cloud, or with cloud estimated from the sun where it states none.
 * An emittance is never above 1. A row that is not a number gives not a number. Against hours that state their cloud
 * the estimate scatters by 10 to 12 W/m²; models of the sky differ by as much.
 * Sources: `sky.clark-allen`, `sky.cloud-of-diffuse`, `sky.cloud-carried`.
 */
export function skyTemperatures(year: WeatherYear, kept: KeptSun = new Map()): Float64Array {
  const { skyInfrared, dryBulb, dewPoint } = year;
  if (skyInfrared) return skyInfrared.map((heat) => (heat / stefanBoltzmann) ** 0.25 - 273.15);
  const cover = year.cloud ?? estimatedCloud(year, kept);
  return dryBulb.map((air, i) => {
    const emittance = clarkAllenEmittance(dewPoint[i] ?? Number.NaN) * cloudFactor(cover[i] ?? Number.NaN);
    return skyTemperature(air, Math.min(1, emittance));
  });
}

/**
 * Cover by cloud for each row, 0 to 1: from the share of the light that is diffuse while the sun stands high in its day;
 * from evening over the night to the morning on a straight line, which is common practice and has no source. A polar
 * night is bridged the same way; a year without sun is taken as half covered.
 */
export function estimatedCloud(
  year: YearClock & Pick<WeatherYear, 'ghi' | 'dhi'>,
  kept: KeptSun = new Map(),
): Float64Array {
  const { ghi, dhi } = year;
  const n = ghi.length;
  const { latitude, longitude, timeZone, stepSeconds, sunOffset } = year;
  const of = [n, latitude, longitude, timeZone, stepSeconds, sunOffset].join(' ');
  const heights = keptColumn(kept, `heights ${of}`, () => sunHeights(year, n));
  const perDay = Math.round(86_400 / year.stepSeconds);
  const seen = Array.from({ length: Math.ceil(n / perDay) }, (_, d) => {
    const most = heights.subarray(d * perDay, (d + 1) * perDay).reduce((a, b) => Math.max(a, b), 0);
    return Array.from({ length: perDay }, (_, k) => d * perDay + k).filter(
      (i) => (ghi[i] ?? 0) > 0 && (heights[i] ?? 0) > heightLeast * most,
    );
  }).flat();
  const cover = new Float64Array(n).fill(coverUnknown);
  for (const i of seen) cover[i] = cloudOfDiffuse((dhi[i] ?? Number.NaN) / (ghi[i] ?? Number.NaN));
  seen.forEach((from, k) => {
    const to = seen[k + 1] ?? (seen[0] ?? 0) + n;
    const [evening, morning] = [cover[from] ?? Number.NaN, cover[to % n] ?? Number.NaN];
    for (let i = from + 1; i < to; i++) cover[i % n] = evening + ((morning - evening) * (i - from)) / (to - from);
  });
  return cover;
}
