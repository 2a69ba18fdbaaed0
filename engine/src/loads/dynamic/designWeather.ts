import type { ClimateMonth, DesignDay, DesignNight } from '../../climate/result.ts';
import { dewPoint } from '../../physics/air/index.ts';
import type { WeatherRows } from '../../physics/building/index.ts';
import { clarkAllenEmittance, cloudFactor, designDay, meanDays, skyTemperature } from '../../physics/sun/index.ts';
import type { Scenario } from '../../plan/scenario.ts';

/** One day of weather that repeats itself, as plain numbers; and the month of the year it stands in, 0 to 12. */
export type DayWeather = {
  readonly month: number;
  readonly firstDay: number;
  readonly latitude: number;
  readonly pressure: number;
  readonly outdoor: readonly number[];
  readonly humidityRatio: number;
  readonly wind: number;
  readonly cloud: number;
  readonly dni: readonly number[];
  readonly dhi: readonly number[];
};

const dark = Array.from({ length: 24 }, () => 0);

/**
 * The cold night as a day without sun under a half-clouded sky whose lowest hour is the design temperature; overcast
 * cold days swing half as far as their month does. Source: `loads.night-day` (common practice).
 */
export function nightWeather(
  night: DesignNight,
  months: readonly ClimateMonth[],
  place: { readonly latitude: number; readonly pressure: number },
  s: Scenario,
): DayWeather {
  const coldest = months.reduce((a, b) => (b.mean < a.mean ? b : a));
  const range = coldest.dailyRange / 2;
  return {
    ...place,
    month: coldest.month - 0.5,
    firstDay: (meanDays[coldest.month - 1] ?? 17) - 1,
    outdoor: designDay(s.of(night.outdoor) + range, range),
    humidityRatio: night.humidityRatio,
    wind: s.of(night.wind),
    cloud: 0.5,
    dni: dark,
    dhi: dark,
  };
}

/** The hot day as the climate states it, under its clear sky; a moved afternoon moves every hour alike. */
export function dayWeather(
  day: DesignDay,
  place: { readonly latitude: number; readonly pressure: number },
  s: Scenario,
): DayWeather {
  const shift = s.of(day.outdoor) - day.outdoor.likely;
  return {
    ...place,
    month: day.month - 0.5,
    firstDay: (meanDays[day.month - 1] ?? 198) - 1,
    outdoor: day.hours.map((h) => h.outdoor + shift),
    humidityRatio: day.humidityRatio,
    wind: s.of(day.wind),
    cloud: 0,
    dni: day.hours.map((h) => h.beamNormal),
    dhi: day.hours.map((h) => h.diffuseLevel),
  };
}

/** The day as rows for the heat balance. Hours are solar, so the place stands on its zone's meridian. */
export function rowsOfDay(day: DayWeather, horizon: WeatherRows['horizon']): WeatherRows {
  const dew = dewPoint(day.humidityRatio, day.pressure);
  const sky = day.outdoor.map((t) =>
    skyTemperature(t, Math.min(1, clarkAllenEmittance(Math.min(dew, t)) * cloudFactor(day.cloud))),
  );
  return {
    rowSeconds: 3600,
    firstDay: day.firstDay,
    latitude: day.latitude,
    longitude: 0,
    timeZone: 0,
    pressure: day.pressure,
    sunOffset: 1800,
    airOffset: 1800,
    dryBulb: Float64Array.from(day.outdoor),
    humidityRatio: new Float64Array(24).fill(day.humidityRatio),
    windSpeed: new Float64Array(24).fill(day.wind),
    sky: Float64Array.from(sky),
    dni: Float64Array.from(day.dni),
    dhi: Float64Array.from(day.dhi),
    horizon,
  };
}
