import { dewPoint, saturationRatio, standardPressure } from '../physics/air/index.ts';
import { monthStart, newYear } from '../physics/calendar.ts';
import {
  airMass,
  extraterrestrialDay,
  extraterrestrialNormal,
  meanDayShape,
  solarConstant,
  splitGlobal,
  sunPosition,
} from '../physics/sun/index.ts';
import { type Chance, chanceOf, normalShare } from './chance.ts';
import type { ClimateMonth, Place } from './result.ts';
import { bisect, type SyntheticDay, syntheticDays } from './syntheticDays.ts';
import type { WeatherYear } from './weather/weatherYear.ts';

/**
 * A year of hours made from twelve months, the same for the same seed: monthly means of temperature, daily range,
 * clearness, humidity and wind are those given; days follow each other as weather does, dull ones in runs, clear ones
 * colder in winter. It states energy; what one winter in ten brings it does not know. Source: `climate.synthetic`.
 */
export function syntheticYear(months: readonly ClimateMonth[], place: Place, seed: number): WeatherYear {
  const chance = chanceOf(seed);
  const days = syntheticDays(months, place.latitude, chance);
  return yearOfDays(months, place, days, winds(months, chance), sunHours(place));
}

type Winds = Pick<WeatherYear, 'windSpeed' | 'windDirection'>;

/** Hours made of days: each day's shape of warmth and sun, vapour and wind as given. `hours` are the place's own. */
export function yearOfDays(
  months: readonly ClimateMonth[],
  place: Place,
  days: readonly SyntheticDay[],
  wind: Winds,
  hours: SunHours,
): WeatherYear {
  const pressure = standardPressure(place.elevation);
  const dryBulb = temperatures(months, days);
  const humidity = humidities(months, dryBulb, pressure);
  return {
    kind: 'weather-year',
    name: 'A year made from twelve months',
    format: 'synthetic',
    stepSeconds: 3600,
    ...place,
    sunOffset: 1800,
    dryBulb,
    ...humidity,
    pressure: new Float64Array(8760).fill(pressure),
    ...wind,
    ...sunOf(days, place.latitude, hours),
  };
}

const inMonth = (month: number): { from: number; to: number } => ({
  from: (monthStart[month] ?? 0) * 24,
  to: (monthStart[month + 1] ?? 365) * 24,
});

/** Each day's shape about means that run on lines from noon to noon, brought back to each month's mean and range. */
function temperatures(months: readonly ClimateMonth[], days: readonly SyntheticDay[]): Float64Array {
  const t = new Float64Array(8760);
  const scales = months.map(() => 1);
  for (let turn = 0; turn < 4; turn++) {
    months.forEach((m, month) => {
      const { from, to } = inMonth(month);
      for (let i = from; i < to; i++) t[i] = hourOf(days, i, scales[month] ?? 1);
      const found = meanRange(t, from, to);
      if (turn < 3) scales[month] = (scales[month] ?? 1) * (m.dailyRange / Math.max(found, 1e-6));
      const off = mean(t, from, to) - m.mean;
      for (let i = from; i < to; i++) t[i] = (t[i] ?? 0) - off;
    });
  }
  return t;
}

function hourOf(days: readonly SyntheticDay[], i: number, scale: number): number {
  const at = (i + 0.5) / 24 - 0.5;
  const d = Math.floor(at);
  const before = days[(d + 365) % 365]?.mean ?? 0;
  const after = days[(d + 1) % 365]?.mean ?? 0;
  const own = days[Math.floor(i / 24)];
  return before + (after - before) * (at - d) + scale * (own?.range ?? 0) * meanDayShape((i % 24) + 0.5);
}

function mean(x: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i++) sum += x[i] ?? 0;
  return sum / (to - from);
}

function meanRange(t: Float64Array, from: number, to: number): number {
  let sum = 0;
  for (let i = from; i < to; i += 24) {
    const day = t.subarray(i, i + 24);
    sum += day.reduce((a, b) => Math.max(a, b), -1e9) - day.reduce((a, b) => Math.min(a, b), 1e9);
  }
  return (sum * 24) / (to - from);
}

/** Vapour that keeps a day's amount, moved so that each month's mean relative humidity is the one given. */
function humidities(months: readonly ClimateMonth[], t: Float64Array, pressure: number) {
  const relativeHumidity = new Float64Array(8760);
  const dew = new Float64Array(8760);
  const most = t.map((x) => saturationRatio(x, pressure));
  const ofDay = Float64Array.from({ length: 365 }, (_, d) => saturationRatio(mean(t, d * 24, d * 24 + 24), pressure));
  months.forEach((m, month) => {
    const { from, to } = inMonth(month);
    const rh = (i: number, share: number): number =>
      Math.min(1, (share * (ofDay[Math.floor(i / 24)] ?? 0)) / (most[i] ?? 1));
    const meanOf = (share: number): number => {
      let sum = 0;
      for (let i = from; i < to; i += 3) sum += rh(i, share);
      return (sum * 3) / (to - from);
    };
    const share = bisect((x) => meanOf(x) - m.relativeHumidity, 0, 3);
    for (let i = from; i < to; i++) {
      relativeHumidity[i] = rh(i, share);
      dew[i] = dewPoint((relativeHumidity[i] ?? 0) * (most[i] ?? 0), pressure);
    }
  });
  return { relativeHumidity, dewPoint: dew };
}

/** Hours of wind tied to each other, spread as a Rayleigh distribution about the month's mean. */
function winds(months: readonly ClimateMonth[], chance: Chance) {
  const windSpeed = new Float64Array(8760);
  const windDirection = new Float64Array(8760);
  let [speed, way] = [chance.normal(), chance.normal()];
  months.forEach((m, month) => {
    const { from, to } = inMonth(month);
    for (let i = from; i < to; i++) {
      speed = 0.95 * speed + Math.sqrt(1 - 0.95 ** 2) * chance.normal();
      way = 0.98 * way + Math.sqrt(1 - 0.98 ** 2) * chance.normal();
      windSpeed[i] = Math.sqrt(-Math.log(1 - Math.min(normalShare(speed), 1 - 1e-9)));
      windDirection[i] = (((270 + 80 * way) % 360) + 360) % 360;
    }
    const scale = m.wind / mean(windSpeed, from, to);
    for (let i = from; i < to; i++) windSpeed[i] = (windSpeed[i] ?? 0) * scale;
  });
  return { windSpeed, windDirection };
}

/** Light above the air in an hour, W/m² on the level, how the air thins it, and the zenith of its mean. */
type SunHour = { readonly above: number; readonly zenith: number; readonly thinning: number };
/** The hours of each day of the year. */
export type SunHours = readonly (readonly SunHour[])[];

/** Where the sun stands in every hour of a place's year: the same for all years made for it. */
export const sunHours = (place: Place): SunHours =>
  Array.from({ length: 365 }, (_, d) => {
    const normal = extraterrestrialNormal(d + 1, solarConstant);
    return Array.from({ length: 24 }, (_h, h) => hourOfSun(place, d, h, normal));
  });

/** A day's sun spread over its hours as the sun stands, thinner where it is low, and split into direct and sky light. */
function sunOf(days: readonly SyntheticDay[], latitude: number, all: SunHours) {
  const [ghi, dni, dhi] = [new Float64Array(8760), new Float64Array(8760), new Float64Array(8760)];
  days.forEach((day, d) => {
    const normal = extraterrestrialNormal(d + 1, solarConstant);
    const hours = all[d] ?? [];
    // The same sun above the air that months state their clearness by.
    const above = extraterrestrialDay(latitude, d + 1, solarConstant) * 1000;
    const thinned = hours.reduce((a, x) => a + x.above * x.thinning, 0);
    if (thinned <= 0) return;
    hours.forEach((x, h) => {
      const global = (day.clearness * above * x.above * x.thinning) / thinned;
      const split = splitGlobal(global, x.zenith, normal);
      const i = d * 24 + h;
      [ghi[i], dni[i], dhi[i]] = [split.global, split.beamNormal, split.diffuse];
    });
  });
  return { ghi, dni, dhi };
}

/** Extraterrestrial light on the level in an hour, W/m², as the mean of its quarters; and how its way through the air thins it. */
function hourOfSun(place: Place, day: number, hour: number, normal: number): SunHour {
  const quarters = Array.from({ length: 4 }, (_, q) => {
    const local = (day * 24 + hour + (q + 0.5) / 4) * 3600;
    return sunPosition({ time: newYear + local - place.timeZone * 3600, ...place }).zenith;
  });
  const above = quarters.reduce((a, z) => a + Math.max(0, Math.cos((z * Math.PI) / 180)) / 4, 0) * normal;
  // The zenith whose cosine is the hour's mean, so that direct light on the level is what the hour holds.
  const zenith = (Math.acos(Math.min(1, above / normal)) * 180) / Math.PI;
  return { above, zenith, thinning: above > 0 ? Math.exp(-0.1 * Math.min(airMass(Math.min(zenith, 89)), 10)) : 0 };
}
