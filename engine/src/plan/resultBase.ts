import type { Job } from '../jobs/job.ts';
import type { Working } from './working.ts';

/** What every trade's result carries beside its own numbers. */
export type ResultBase = {
  readonly workings: Readonly<Record<string, Working>>;
  readonly wanted: readonly Job[];
};
