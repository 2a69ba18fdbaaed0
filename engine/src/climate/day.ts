import {
  airMass,
  clearSky,
  declinationOf,
  designDay,
  extraterrestrialNormal,
  meanDays,
  simplePosition,
  solarConstant,
} from '../physics/sun/index.ts';
import type { DesignHour } from './result.ts';

/** Linke turbidity of a clear summer day in the country. Source: `climate.turbidity` (common practice). */
const turbidity = 3.5;

/** W/m² of the sun above the air on a month's mean day, facing it. */
export const sunAboveAir = (month: number): number => extraterrestrialNormal(meanDays[month - 1] ?? 198, solarConstant);

/** The 24 hours of a clear hot day in local solar time: temperature, sun, and its place. °C, K, degrees, m, Pa. */
export function hotDay(at: {
  readonly highest: number;
  readonly range: number;
  readonly latitude: number;
  readonly elevation: number;
  readonly pressure: number;
  readonly month: number;
}): DesignHour[] {
  const day = meanDays[at.month - 1] ?? 198;
  const outside = sunAboveAir(at.month);
  const declination = declinationOf(day);
  return designDay(at.highest, at.range).map((outdoor, i) => {
    const hour = i + 0.5;
    const { zenith, azimuth } = simplePosition(at.latitude, declination, hour);
    const up = zenith < 89;
    const mass = up ? airMass(zenith) * (at.pressure / 101_325) : 0;
    const sky = up ? clearSky(zenith, mass, turbidity, at.elevation, outside) : { beamNormal: 0, diffuse: 0 };
    return { hour, outdoor, zenith, azimuth, beamNormal: sky.beamNormal, diffuseLevel: sky.diffuse };
  });
}
