import type { JobMessage } from '@kneewall/engine';
import type { Problem, Project } from '@kneewall/project';

/** A weather file as it was imported, by its SHA-256. */
export type WeatherText = { readonly sha: string; readonly text: string };

/** What the jobs worker is told: what it may borrow, then a job to do. */
export type ToJobs =
  | { readonly type: 'lend'; readonly file: WeatherText | undefined; readonly site: Project['site'] }
  | Extract<JobMessage, { type: 'start' }>;

/** What it says: how far it is, what came out, and what it found wrong with a file it read. */
export type FromJobs = JobMessage | { readonly type: 'read'; readonly problems: readonly Problem[] };
