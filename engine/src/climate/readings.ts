import type { ExpectedReading } from '../plan/lines.ts';

/** Outdoor air is a condition of other readings, not one of its own. */
export const readings = (): readonly ExpectedReading[] => [];
