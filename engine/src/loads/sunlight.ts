import type { DesignDay } from '../climate/result.ts';
import { rad } from '../physics/exact.ts';
import { angleModifier } from '../physics/glazing/index.ts';
import { airMass, groundOnPlane, incidenceCosine, skyOnPlane } from '../physics/sun/index.ts';

export type Plane = { readonly tilt: number; readonly azimuth: number };

/** Sun on a plane for the 24 hours of the hot day, W/m²: direct, and the rest from sky and ground. */
export type PlaneSun = {
  readonly beam: readonly number[];
  readonly diffuse: readonly number[];
  /** What glass of one and of two panes lets through at the sun's angle, against normal incidence, by hour. */
  readonly throughGlass: Readonly<Record<1 | 2, readonly number[]>>;
};

/** Remembers planes within one design, since every scenario asks for the same few. */
export function sunOnPlanes(day: DesignDay, reflectance: number): (plane: Plane) => PlaneSun {
  const kept = new Map<string, PlaneSun>();
  return (plane) => {
    const key = `${plane.tilt} ${plane.azimuth}`;
    const found = kept.get(key) ?? sunOnPlane(day, plane, reflectance);
    kept.set(key, found);
    return found;
  };
}

function sunOnPlane(day: DesignDay, plane: Plane, reflectance: number): PlaneSun {
  const hours = day.hours.map((h) => {
    const up = h.zenith < 89;
    const cosine = up ? Math.max(0, incidenceCosine(plane, h)) : 0;
    const global = h.diffuseLevel + h.beamNormal * Math.max(0, Math.cos(h.zenith * rad));
    const light = { beamNormal: h.beamNormal, diffuse: h.diffuseLevel };
    const sky = up ? skyOnPlane(plane, h, light, airMass(h.zenith), day.aboveAir) : 0;
    return { beam: h.beamNormal * cosine, diffuse: sky + groundOnPlane(plane.tilt, global, reflectance), cosine };
  });
  const through = (panes: 1 | 2) =>
    hours.map((h) => (h.cosine > 0 ? angleModifier(panes, Math.acos(Math.min(1, h.cosine)) / rad) : 0));
  return {
    beam: hours.map((h) => h.beam),
    diffuse: hours.map((h) => h.diffuse),
    throughGlass: { 1: through(1), 2: through(2) },
  };
}

/** Glass and what covers it: size m, share of the sun at normal incidence, shade, overhang m. */
export type Glazed = {
  readonly width: number;
  readonly height: number;
  readonly panes: 1 | 2;
  readonly sunShare: number;
  readonly shade: number;
  readonly overhang: number;
  readonly gap: number;
};

/** Sky light through slanted glass, against normal incidence. Source: `glazing.fresnel` (hemispherical mean). */
const diffuseModifier = { 1: 0.912, 2: 0.882 } as const;

/** Heat of the sun through a window by hour, W. An overhang stops direct sun only. Source: `loads.window-sun`. */
export function windowSun(glazed: Glazed, plane: Plane, sun: PlaneSun, day: Pick<DesignDay, 'hours'>): number[] {
  const reach = glazed.width * glazed.height * glazed.sunShare * glazed.shade;
  const through = sun.throughGlass[glazed.panes];
  return day.hours.map((h, i) => {
    const direct = (sun.beam[i] ?? 0) * (through[i] ?? 0);
    const sunlit = direct > 0 ? direct * sunlitShare(glazed, plane, h) : 0;
    return reach * (sunlit + (sun.diffuse[i] ?? 0) * diffuseModifier[glazed.panes]);
  });
}

/** Share of the glass that the overhang leaves in the sun, by the profile angle. */
export function sunlitShare(
  glazed: Pick<Glazed, 'overhang' | 'gap' | 'height'>,
  plane: Plane,
  sun: { zenith: number; azimuth: number },
): number {
  const facing = Math.cos((sun.azimuth - plane.azimuth) * rad);
  if (glazed.overhang <= 0 || facing <= 0.01 || sun.zenith >= 90) return 1;
  const profile = Math.tan((90 - sun.zenith) * rad) / facing;
  const shadow = Math.max(0, glazed.overhang * profile - glazed.gap);
  return Math.max(0, 1 - shadow / glazed.height);
}
