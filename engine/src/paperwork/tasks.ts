import type { Task } from '../plan/lines.ts';

/** Calls and letters take none of the hours in which people stand in the attic: they are listed with the papers. */
export const tasks = (): readonly Task[] => [];
