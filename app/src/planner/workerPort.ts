import { applied } from './difference.ts';
import type { LastSent, OnItsWay } from './messages.ts';
import type { PlanPort } from './planner.ts';

/** The planning worker as a port. */
export function workerPort(): PlanPort {
  const worker = new Worker(new URL('./plan.worker.ts', import.meta.url), { type: 'module', name: 'kneewall-plan' });
  let last: LastSent | undefined;
  return {
    post: (message) => worker.postMessage(message),
    listen: (heard) => {
      worker.onmessage = ({ data }: MessageEvent<OnItsWay>) => {
        if (data.type !== 'changed') {
          heard(data);
          return;
        }
        const { revision, difference, ms } = data;
        // Also where nobody waits for this one any more: the next is told from it.
        last = applied(last, difference) as LastSent;
        heard({ type: 'plan', revision, ...last, ms });
      };
    },
  };
}
