import type { Task } from '../plan/lines.ts';

/** The schedule orders the work of others and has none of its own. */
export const tasks = (): readonly Task[] => [];
