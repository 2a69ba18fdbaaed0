import type { ExpectedReading } from '../plan/lines.ts';

/** Nothing is read off a shopping list. */
export const readings = (): readonly ExpectedReading[] => [];
