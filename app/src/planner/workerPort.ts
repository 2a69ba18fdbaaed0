import { portOf } from '../workerPort.ts';
import type { PlanPort } from './planner.ts';

/** The planning worker as a port. */
export const workerPort = (): PlanPort =>
  portOf(new Worker(new URL('./plan.worker.ts', import.meta.url), { type: 'module', name: 'kneewall-plan' }));
