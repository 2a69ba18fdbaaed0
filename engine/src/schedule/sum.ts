import type { Said } from '../plan/trade.ts';
import type { ScheduleResult } from './result.ts';
import { workPlanJob } from './workJob.ts';
import { workInputs } from './workSpec.ts';

/** The windows with the plan asked for that the tasks of all trades make. */
export function sum(result: ScheduleResult, { tasks }: Pick<Said, 'tasks'>): ScheduleResult {
  if (!result.frame.ok) return result;
  if (tasks.length === 0) return { ...result, work: { ok: false, because: 'missing', paths: ['candidates'] } };
  const job = workPlanJob(workInputs(result.frame.value, tasks));
  return { ...result, work: { ok: false, because: 'pending', paths: [job.key] }, wanted: [job] };
}
