/**
 * How far a jet of room-warm air gets before its middle has slowed to `terminal`: x = K V₀ √A₀ / V. Velocities m/s, open
 * area m², all above zero; in m. Source: `jet.throw` (the form of ASHRAE's chapter on space air diffusion, from memory).
 */
export const throwTo = (terminal: number, k: number, velocity: number, area: number): number =>
  (k * velocity * Math.sqrt(area)) / terminal;

/**
 * K by where an opening is and how it blows, for the velocity in its open area. Source: `jet.constants` (the same
 * chapter's table of generic outlets, from memory).
 */
export const throwConstants = {
  'ceiling one way': 5.5,
  'ceiling fanned': 3.3,
  'ceiling round': 1.0,
  'high wall straight': 5.0,
  'high wall fanned': 3.7,
  'low wall straight': 4.5,
  'low wall fanned': 3.0,
  'floor straight': 4.1,
  'floor fanned': 1.6,
} as const;
export type Outlet = keyof typeof throwConstants;
