import type { MaterialLine } from '../plan/lines.ts';

/** Planning buys nothing. */
export const materials = (): readonly MaterialLine[] => [];
