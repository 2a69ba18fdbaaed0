import type { MaterialLine } from '../plan/lines.ts';

/** Weather is not bought. */
export const materials = (): readonly MaterialLine[] => [];
