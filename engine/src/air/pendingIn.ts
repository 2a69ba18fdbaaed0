import type { Job } from '../jobs/job.ts';
import type { Outcome } from '../plan/outcome.ts';

/** A result that its job will bring, or why there is no job. */
export const pendingIn = (job: Outcome<Job>): Outcome<never> =>
  job.ok ? { ok: false, because: 'pending', paths: [job.value.key] } : job;
