import type { ExpectedReading } from '../plan/lines.ts';

/** Nothing is read off a paper. */
export const readings = (): readonly ExpectedReading[] => [];
