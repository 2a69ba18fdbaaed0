import type { Task } from '../plan/lines.ts';

/** Each trade plans the reading of its own numbers; nothing is added to them here. */
export const tasks = (): readonly Task[] => [];
