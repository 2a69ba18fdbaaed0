import { asked, type Problem } from '@kneewall/project';
import { sunHeights } from './sunHeights.ts';
import type { WeatherYear } from './weatherYear.ts';

const hoursMost = 12;
/** Every third row is enough to tell an hour. */
const stride = 3;

/**
 * The sun of a year against its own clock: global light less diffuse less direct on the level, for every half hour the
 * clock may be off; and how much of the light falls while the sun is down. Source: `climate.closure`.
 */
export function clockProblem(year: WeatherYear): Problem | undefined {
  const halfHours = year.stepSeconds === 3600 ? [0, 1800] : [0];
  const misses = halfHours.flatMap((early) => missesOnGrid(year, early));
  if (misses.length === 0) return undefined;
  const best = misses.reduce((a, b) => (b.miss < a.miss ? b : a));
  const here = misses.find((m) => m.shift === 0);
  if (!here) return undefined;
  if (best.shift !== 0 && here.miss >= 12 && here.miss >= 2 * best.miss)
    return asked(
      'time-slip',
      ['timeZone'],
      `The sun stands about ${Math.abs(best.shift) / 60} h off in this file. Check its time zone and longitude.`,
      { found: best.shift },
    );
  return here.dark < 0.01
    ? undefined
    : asked('time-slip', ['latitude'], 'The sun of this file does not fit its place. Check latitude and longitude.', {
        found: Number(here.dark.toFixed(4)),
      });
}

type Miss = {
  /** Minutes by which the sun is taken later than the clock says. */
  readonly shift: number;
  readonly miss: number;
  /** Share of the light that falls while the sun's centre is down. */
  readonly dark: number;
};

/** One row of suns serves all shifts by whole steps: the sun of a shifted hour is that of another row. */
function missesOnGrid(year: WeatherYear, late: number): Miss[] {
  const n = year.ghi.length;
  const perHour = Math.round(3600 / year.stepSeconds);
  const heights = sunHeights(year, n, late);
  const steps = hoursMost * perHour;
  return Array.from({ length: 2 * steps + 1 }, (_, k) => missAt(year, heights, k - steps, late));
}

function missAt(year: WeatherYear, heights: Float64Array, step: number, late: number): Miss {
  const n = heights.length;
  let [squares, count, light, dark] = [0, 0, 0, 0];
  for (let i = 0; i < n; i += stride) {
    const ghi = year.ghi[i] ?? 0;
    if (!(ghi > 0)) continue;
    const height = heights[(i + step + n) % n] ?? 0;
    squares += (ghi - (year.dhi[i] ?? 0) - (year.dni[i] ?? 0) * Math.max(0, height)) ** 2;
    count++;
    light += ghi;
    if (height < 0) dark += ghi;
  }
  const shift = (step * year.stepSeconds + late) / 60;
  return { shift, miss: count === 0 ? 0 : Math.sqrt(squares / count), dark: light === 0 ? 0 : dark / light };
}
