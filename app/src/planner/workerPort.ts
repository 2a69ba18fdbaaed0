import { portOf } from '../workerPort.ts';
import { applied } from './difference.ts';
import type { LastSent, OnItsWay, ToPlanner } from './messages.ts';
import type { PlanPort } from './planner.ts';

/** The planning worker as a port. Of a plan it sends what is not as in the one before: here it becomes whole again. */
export function workerPort(): PlanPort {
  const worker = new Worker(new URL('./plan.worker.ts', import.meta.url), { type: 'module', name: 'kneewall-plan' });
  const { post, listen } = portOf<ToPlanner, OnItsWay>(worker);
  let last: LastSent | undefined;
  return {
    post,
    listen: (heard) =>
      listen((message) => {
        if (message.type !== 'changed') {
          heard(message);
          return;
        }
        const { revision, difference, ms } = message;
        // Also where nobody waits for this one any more: the next is told from it.
        last = applied(last, difference) as LastSent;
        heard({ type: 'plan', revision, ...last, ms });
      }),
  };
}
