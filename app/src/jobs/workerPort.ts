import type { JobPort } from './jobHost.ts';
import type { FromJobs } from './messages.ts';

/** A worker for long computations, apart from the one that plans, so that edits never wait for it. */
export function jobWorkerPort(): JobPort {
  const worker = new Worker(new URL('./job.worker.ts', import.meta.url), { type: 'module', name: 'kneewall-jobs' });
  return {
    post: (message) => worker.postMessage(message),
    listen: (heard) => {
      worker.onmessage = ({ data }: MessageEvent<FromJobs>) => heard(data);
    },
    end: () => worker.terminate(),
  };
}
