import { clarkAllenEmittance, cloudFactor, skyTemperature } from '../physics/sun/index.ts';
import type { WeatherYear } from './weather/weatherYear.ts';

const stefanBoltzmann = 5.670374e-8;

/**
 * Temperature at which the sky radiates, °C by row: from the heat it radiates down where the file states that, else by
 * Clark & Allen from dew point and opaque cloud. A file that states neither has its cloud read off the share of sky
 * light in the day's sun. Sources: `sky.clark-allen`, `climate.cloud-from-sun` (common practice).
 */
export function skyTemperatures(year: WeatherYear): Float64Array {
  const { skyInfrared, dewPoint, dryBulb } = year;
  if (skyInfrared) return skyInfrared.map((down) => (down / stefanBoltzmann) ** 0.25 - 273.15);
  const cloud = year.cloud ?? cloudFromSun(year);
  return dryBulb.map((air, i) => {
    const emittance = clarkAllenEmittance(dewPoint[i] ?? air) * cloudFactor(cloud[i] ?? 0);
    return skyTemperature(air, Math.min(1, emittance));
  });
}

/** Global light from which on the share of sky light tells how cloudy it is, W/m². */
const enoughSun = 50;

/** Cloud by day from the share of sky light, clear at 0.2 and covered at 0.95; through the night on a line between days. */
function cloudFromSun({ ghi, dhi }: WeatherYear): Float64Array {
  const n = ghi.length;
  const seen = Array.from(ghi, (global, i) =>
    global > enoughSun ? Math.max(0, Math.min(1, ((dhi[i] ?? 0) / global - 0.2) / 0.75)) : undefined,
  );
  const first = seen.findIndex((c) => c !== undefined);
  const cloud = new Float64Array(n).fill(0.5);
  if (first < 0) return cloud;
  let last = first;
  for (let k = 1; k <= n; k++) {
    const i = first + k;
    const now = seen[i % n];
    if (now === undefined) continue;
    const before = seen[last % n] ?? now;
    for (let j = last; j <= i; j++) cloud[j % n] = before + ((now - before) * (j - last)) / (i - last);
    last = i;
  }
  return cloud;
}
