import type { ExpectedReading } from '../plan/lines.ts';

/** Nothing is read off a plan of work. */
export const readings = (): readonly ExpectedReading[] => [];
