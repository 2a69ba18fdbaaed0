import type { FromPlanner } from './messages.ts';
import type { PlanPort } from './planner.ts';

/** The planning worker as a port. */
export function workerPort(): PlanPort {
  const worker = new Worker(new URL('./plan.worker.ts', import.meta.url), { type: 'module', name: 'kneewall-plan' });
  return {
    post: (message) => worker.postMessage(message),
    listen: (heard) => {
      worker.onmessage = ({ data }: MessageEvent<FromPlanner>) => heard(data);
    },
  };
}
