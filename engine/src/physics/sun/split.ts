import { diffuseShare, type Irradiance } from './radiation.ts';

/** Below this height of the sun a split says nothing: cosine of the zenith, and the zenith itself in degrees. */
const cosineLeast = 0.065;
const zenithMost = 87;

/**
 * Global radiation on the level, W/m², into direct and diffuse by hourly clearness (Erbs 1982). Zenith in degrees,
 * extraterrestrial normal in W/m². Near the horizon all of it is diffuse; the beam never passes the extraterrestrial.
 * Negative or missing global gives no light. Source: `sun.split` (from memory).
 */
export function splitGlobal(global: number, zenith: number, extraterrestrial: number): Irradiance {
  if (!(global > 0)) return { global: 0, beamNormal: 0, diffuse: 0 };
  const cosZ = Math.cos((zenith * Math.PI) / 180);
  if (zenith > zenithMost) return { global, beamNormal: 0, diffuse: global };
  const clearness = Math.min(1, global / (extraterrestrial * Math.max(cosineLeast, cosZ)));
  const beamNormal = Math.min(extraterrestrial, (global * (1 - diffuseShare(clearness))) / cosZ);
  return { global, beamNormal, diffuse: global - beamNormal * cosZ };
}
