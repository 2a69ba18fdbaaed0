import type { ExpectedReading } from '../plan/lines.ts';

/** The trades say what they expect; this one holds it against what was read. */
export const readings = (): readonly ExpectedReading[] => [];
