import type { OutdoorFace, ZoneFace } from '../../physics/building/index.ts';

/** Emittance of painted and bare building surfaces. Source: `iso-6946.films`. */
const emittance = 0.9;

// Convection inside, W/(m²K): heat rising 5.0, sideways 2.5, lying still 0.7. Source: `iso-52016.convection` (from memory).
const upright = { convective: 2.5 } as const;
const level = { convective: 2.85, swing: 2.15 } as const;

/** A face that looks into a zone; `tilt` as seen from its own zone: 0 a floor, 90 a wall, 180 a ceiling. */
export function zoneFace(zone: string, tilt: number): ZoneFace {
  if (tilt > 60 && tilt < 120) return { side: 'zone', zone, emittance, ...upright };
  return { side: 'zone', zone, emittance, ...level, looks: tilt <= 60 ? 1 : -1 };
}

/** A face in wind, sun and sky; tilt 0 looks up. */
export const outdoorFace = (tilt: number, azimuth: number, absorptance: number): OutdoorFace => ({
  side: 'outdoors',
  tilt,
  azimuth,
  absorptance,
  emittance,
  convective: { wind: 1 },
});

/** Glass is smoother than boards. Source: `standard-140.films` (from memory). */
export const glassFace = (tilt: number, azimuth: number): OutdoorFace => ({
  ...outdoorFace(tilt, azimuth, 0),
  emittance: 0.84,
  convective: { wind: 8 / 11.9 },
});
