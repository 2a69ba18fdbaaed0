import { rad } from '../exact.ts';
import type { SunSteps } from './weatherSteps.ts';

export type Plane = { readonly tilt: number; readonly azimuth: number };

/** Sun on a plane by step, W/m²: direct with what comes from round the sun, sky, ground; and the cosine of its angle. */
export type PlaneSun = {
  readonly direct: Float32Array;
  readonly sky: Float32Array;
  readonly ground: Float32Array;
  readonly cosine: Float32Array;
};

/** Degrees, azimuth clockwise from north, tilt 0 faces up. Source: `sun.perez` for the sky. */
export function sunOnPlane(sun: SunSteps, plane: Plane, reflectance: number): PlaneSun {
  const n = sun.up.length;
  const made = (): Float32Array => new Float32Array(n);
  const out = { direct: made(), sky: made(), ground: made(), cosine: made() };
  const [sinTilt, cosTilt] = [Math.sin(plane.tilt * rad), Math.cos(plane.tilt * rad)];
  const [toEast, toNorth] = [sinTilt * Math.sin(plane.azimuth * rad), sinTilt * Math.cos(plane.azimuth * rad)];
  const [seesSky, seesGround] = [(1 + cosTilt) / 2, ((1 - cosTilt) / 2) * reflectance];
  for (let i = 0; i < n; i++) {
    const level = sun.level[i] ?? 0;
    if (level === 0) continue;
    const cosine =
      (sun.up[i] ?? 0) > 0
        ? Math.max(0, (sun.up[i] ?? 0) * cosTilt + (sun.east[i] ?? 0) * toEast + (sun.north[i] ?? 0) * toNorth)
        : 0;
    out.cosine[i] = cosine;
    out.direct[i] = (sun.beam[i] ?? 0) * cosine;
    out.sky[i] = Math.max(0, (sun.even[i] ?? 0) * seesSky + (sun.band[i] ?? 0) * sinTilt);
    out.ground[i] = level * seesGround;
  }
  return out;
}
