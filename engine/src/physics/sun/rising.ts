import { rad } from '../exact.ts';
import { sunPosition } from './position.ts';

/** The sun's centre when its upper edge is seen on the horizon, degrees from the zenith. */
const zenithAtHorizon = 90.8333;
/** Seconds by which the sun lags for each degree of hour angle. */
const secondsPerDegree = 240;

/** Seconds since 1970-01-01 UTC. Without `rise` and `set` the sun stays up, or down, that day, as `always` says. */
export type SunDay = {
  readonly transit: number;
  readonly rise?: number;
  readonly set?: number;
  readonly always?: 'up' | 'down';
};

/**
 * When the sun rises, stands highest and sets around a local noon. `noon` in seconds UTC, within some hours of it;
 * degrees north and east. Upper edge with refraction. Within 2 s of the reference days up to 41° latitude; close to the
 * polar circles a rise is as blunt as the sun's path is flat. Not a number gives not a number. Source: `sun.position` (Meeus, from memory).
 */
export function sunDay(at: { readonly noon: number; readonly latitude: number; readonly longitude: number }): SunDay {
  const transit = meetHourAngle(at, at.noon, () => 0) ?? Number.NaN;
  const rise = meetHourAngle(at, transit, (d) => negative(horizonAngle(at.latitude, d)));
  const set = meetHourAngle(at, transit, (d) => horizonAngle(at.latitude, d));
  if (rise !== undefined && set !== undefined) return { transit, rise, set };
  const highest = sunPosition({ latitude: at.latitude, longitude: at.longitude, time: transit }).zenith;
  if (Number.isNaN(highest)) return { transit: Number.NaN };
  return { transit, always: highest < zenithAtHorizon ? 'up' : 'down' };
}

const negative = (angle: number | undefined): number | undefined => (angle === undefined ? undefined : -angle);

/** Hour angle at which the sun crosses the horizon, degrees; undefined where it does not. */
function horizonAngle(latitude: number, declination: number): number | undefined {
  const x =
    (Math.cos(zenithAtHorizon * rad) - Math.sin(latitude * rad) * Math.sin(declination * rad)) /
    (Math.cos(latitude * rad) * Math.cos(declination * rad));
  return x >= -1 && x <= 1 ? Math.acos(x) / rad : undefined;
}

/**
 * The moment near `start` at which the sun's hour angle is what its declination then asks for. Undefined where it asks
 * for none, and where the sun's path only grazes the horizon, so that the search does not settle.
 */
function meetHourAngle(
  at: { readonly latitude: number; readonly longitude: number },
  start: number,
  wanted: (declination: number) => number | undefined,
): number | undefined {
  let time = start;
  for (let i = 0; i < 12; i++) {
    const sun = sunPosition({ time, latitude: at.latitude, longitude: at.longitude });
    const target = wanted(sun.declination);
    if (target === undefined) return undefined;
    const turn = target - sun.hourAngle;
    const step = (turn - 360 * Math.round(turn / 360)) * secondsPerDegree;
    time += step;
    if (Math.abs(step) < 0.05) return time;
  }
  return undefined;
}
