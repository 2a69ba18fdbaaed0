import { newYear } from '../../physics/calendar.ts';
import { sunPosition } from '../../physics/sun/index.ts';
import type { WeatherYear } from './weatherYear.ts';

/** What a year says of its rows' sun: how many rows, how long, where, and by which clock. */
export type YearClock = Pick<WeatherYear, 'latitude' | 'longitude' | 'timeZone' | 'stepSeconds' | 'sunOffset'>;

/**
 * Cosine of the sun's distance from the zenith at the moment each row's sun stands, `late` seconds after what the clock
 * says; negative while the sun is down. Any year without leap day does: the sun's place by date repeats to a quarter of
 * a degree. Source: `sun.position`.
 */
export function sunHeights(clock: YearClock, rows: number, late = 0): Float64Array {
  const heights = new Float64Array(rows);
  const start = newYear - clock.timeZone * 3600 + clock.sunOffset + late;
  for (let i = 0; i < rows; i++) {
    const time = start + i * clock.stepSeconds;
    const { zenith } = sunPosition({ time, latitude: clock.latitude, longitude: clock.longitude });
    heights[i] = Math.cos((zenith * Math.PI) / 180);
  }
  return heights;
}
