import type { Job, JobMessage, Rows } from '@kneewall/engine';
import type { Problem, Project } from '@kneewall/project';

/** A weather file as it was imported, by its SHA-256. */
export type WeatherText = { readonly sha: string; readonly text: string };

/** A log as it was imported: a handle, whose bytes are fetched by whoever reads it. */
export type LogFile = { readonly sha: string; readonly file: Blob };

/** What the jobs worker is told: what it may borrow (recorded years only for the job that reads them), then a job to do. */
export type ToJobs =
  | {
      readonly type: 'lend';
      readonly file: WeatherText | undefined;
      readonly site: Project['site'];
      readonly recorded: readonly WeatherText[];
      /** Logs, only for the job that reads them, and how each is read. */
      readonly logs?: readonly LogFile[];
      readonly logEntries?: Project['logs'];
    }
  | Extract<JobMessage, { type: 'start' }>;

/** A piece of a job that several workers share, and what a worker says of its piece. */
export type ToPiece = { readonly type: 'piece'; readonly job: Job; readonly from: number; readonly to: number };
export type FromPiece = { readonly type: 'piece'; readonly done: number; readonly rows?: Rows };

/** What it says: how far it is, what came out, and what it found wrong with a file it read. */
export type FromJobs = JobMessage | { readonly type: 'read'; readonly problems: readonly Problem[] };
