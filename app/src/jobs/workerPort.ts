import { portOf } from '../workerPort.ts';
import type { JobPort } from './jobHost.ts';

/** A worker for long computations, apart from the one that plans, so that edits never wait for it. */
export const jobWorkerPort = (): JobPort =>
  portOf(new Worker(new URL('./job.worker.ts', import.meta.url), { type: 'module', name: 'kneewall-jobs' }));
