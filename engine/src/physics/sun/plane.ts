import { rad } from '../exact.ts';
import { groundOnPlane, incidenceCosine, skyOnPlane } from './radiation.ts';

type Plane = { readonly tilt: number; readonly azimuth: number };
type Sun = { readonly zenith: number; readonly azimuth: number };
type Light = { readonly beamNormal: number; readonly diffuse: number };

/** Sky light on a tilted plane from a sky as bright everywhere, W/m² (Liu & Jordan). Source: `sun.isotropic` (from memory). */
export const isotropicSky = (tilt: number, diffuse: number): number => (diffuse * (1 + Math.cos(tilt * rad))) / 2;

/**
 * Sky light on a tilted plane by Hay & Davies 1980, W/m²: what the clear air scatters close to the sun comes from the
 * sun, the rest from a sky as bright everywhere. Sun by its apparent place. Source: `sun.hay-davies` (from memory).
 */
export function skyHayDavies(plane: Plane, sun: Sun, light: Light, extraterrestrial: number): number {
  const share = Math.max(0, light.beamNormal) / extraterrestrial;
  // Cosine of 89 degrees: a setting sun must not blow the ratio up.
  const level = Math.max(0.01745, Math.cos(sun.zenith * rad));
  const ratio = Math.max(0, incidenceCosine(plane, sun)) / level;
  return light.diffuse * share * ratio + (1 - share) * isotropicSky(plane.tilt, light.diffuse);
}

export type PlaneLight = {
  /** Degrees between the sun and the plane's normal. */
  readonly incidence: number;
  /** W/m² */
  readonly beam: number;
  readonly sky: number;
  readonly ground: number;
  readonly total: number;
};

/**
 * All light on a tilted plane, W/m²: direct, sky by Perez 1990, thrown up by the ground. Degrees, azimuth clockwise
 * from north, tilt 0 faces up; sun by its apparent place; relative air mass, extraterrestrial normal W/m². A sun below
 * the horizon gives no direct light. Source: `sun.perez`.
 */
export function lightOnPlane(
  plane: Plane,
  sun: Sun,
  light: Light & { readonly global: number },
  air: { readonly mass: number; readonly extraterrestrial: number; readonly reflectance: number },
): PlaneLight {
  const cosine = Math.max(-1, Math.min(1, incidenceCosine(plane, sun)));
  const beam = sun.zenith < 90 ? light.beamNormal * Math.max(0, cosine) : 0;
  const sky = skyOnPlane(plane, sun, light, air.mass, air.extraterrestrial);
  const ground = groundOnPlane(plane.tilt, light.global, air.reflectance);
  return { incidence: Math.acos(cosine) / rad, beam, sky, ground, total: beam + sky + ground };
}
