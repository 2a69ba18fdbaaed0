import type { DuctKind } from './stock.ts';

export type DuctRole = 'supply trunk' | 'supply branch' | 'return';

/** Most m/s by role, in rigid and in flexible duct. */
export type VelocityLimits = Readonly<Record<DuctRole, { readonly rigid: number; readonly flexible: number }>>;

/** m/s in 100 fpm. */
const hundredFeet = 0.508;

/**
 * What stays quiet: supply trunks 900 fpm in rigid and 700 in flexible duct, supply branches and returns 700.
 * Source: `air.velocity-role`.
 */
export const quietVelocities: VelocityLimits = {
  'supply trunk': { rigid: 9 * hundredFeet, flexible: 7 * hundredFeet },
  'supply branch': { rigid: 7 * hundredFeet, flexible: 7 * hundredFeet },
  return: { rigid: 7 * hundredFeet, flexible: 7 * hundredFeet },
};

export const velocityMost = (limits: VelocityLimits, role: DuctRole, kind: DuctKind): number =>
  limits[role][kind === 'flexible' ? 'flexible' : 'rigid'];
