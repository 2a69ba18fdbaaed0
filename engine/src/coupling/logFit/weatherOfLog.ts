import type { WeatherYear } from '../../climate/weather/weatherYear.ts';
import type { HouseLog } from '../../commissioning/logs/logHours.ts';
import { monthStart, newYear } from '../../physics/calendar.ts';
import { extraterrestrialNormal, solarConstant, splitGlobal, sunPosition } from '../../physics/sun/index.ts';

const hourSeconds = 3600;
const daySeconds = 86_400;
/** W/m² on the level that nothing on earth passes: what is more is power of panels, and no sun that is known. */
const sunMost = 1400;

export type LogWeather = {
  readonly weather: WeatherYear;
  /** The hour of the year, 0 to 8759, at which an hour of the log stands. */
  readonly hourOf: (hour: number) => number;
};

/**
 * A weather year with what a log measured in the place of its own air, wind and sun; of hours that a log has from several
 * years the last. Hours and quantities that it lacks stay those of the year; its dew point keeps its distance from the air.
 */
export function weatherOfLog(log: HouseLog, year: WeatherYear): LogWeather {
  const perHour = hourSeconds / year.stepSeconds;
  const columns = {
    dryBulb: year.dryBulb.slice(),
    dewPoint: year.dewPoint.slice(),
    windSpeed: year.windSpeed.slice(),
    ghi: year.ghi.slice(),
    dni: year.dni.slice(),
    dhi: year.dhi.slice(),
  };
  const hourOf = (h: number): number => yearHour(log.first + h);
  const put = (name: keyof typeof columns, row: number, value: number | undefined): void => {
    if (value !== undefined && !Number.isNaN(value)) columns[name][row] = value;
  };
  for (let h = 0; h < log.outdoor.length; h++)
    for (let k = 0; k < perHour; k++) {
      const row = hourOf(h) * perHour + k;
      const air = log.outdoor[h];
      put('dewPoint', row, (year.dewPoint[row] ?? 0) + (air ?? Number.NaN) - (year.dryBulb[row] ?? 0));
      put('dryBulb', row, air);
      put('windSpeed', row, log.wind?.[h]);
      const sun = log.sunIs === 'measured' ? log.sun?.[h] : undefined;
      if (sun === undefined || Number.isNaN(sun)) continue;
      const parts = partsOf(Math.max(0, Math.min(sunMost, sun)), row, year);
      put('ghi', row, parts.global);
      put('dni', row, parts.beamNormal);
      put('dhi', row, parts.diffuse);
    }
  return { weather: { ...year, ...columns }, hourOf };
}

/** Sun on the level split by the hour's own height of the sun. */
function partsOf(global: number, row: number, year: WeatherYear) {
  const time = newYear - year.timeZone * hourSeconds + year.sunOffset + row * year.stepSeconds;
  const { zenith } = sunPosition({ time, latitude: year.latitude, longitude: year.longitude });
  const day = Math.floor((row * year.stepSeconds) / daySeconds) + 1;
  return splitGlobal(global, zenith, extraterrestrialNormal(day, solarConstant));
}

/** The hour of a year without a leap day: 29 February stands with the 28th. Hours from 1970. */
function yearHour(hours: number): number {
  const date = new Date(hours * hourSeconds * 1000);
  const month = date.getUTCMonth();
  const last = (monthStart[month + 1] ?? 365) - (monthStart[month] ?? 0);
  const day = (monthStart[month] ?? 0) + Math.min(date.getUTCDate(), last) - 1;
  return 24 * day + date.getUTCHours();
}
