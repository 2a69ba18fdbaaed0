import type { MaterialLine } from '../plan/lines.ts';

/** Papers are asked for, not bought: fees stand with them. */
export const materials = (): readonly MaterialLine[] => [];
