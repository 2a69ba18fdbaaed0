import type { MaterialLine } from '../plan/lines.ts';

/** Instruments are borrowed; what they cost is the price list's. */
export const materials = (): readonly MaterialLine[] => [];
