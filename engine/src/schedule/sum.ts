import type { Said } from '../plan/trade.ts';
import type { ScheduleResult } from './result.ts';
import { workPlanJob } from './workJob.ts';
import { workInputs } from './workSpec.ts';

/** The windows with the plan asked for that the tasks of all trades make. */
export function sum(result: ScheduleResult, { tasks }: Pick<Said, 'tasks'>): ScheduleResult {
  if (!result.frame.ok) return result;
  // What every season asks for again has its days in the calendar of upkeep, not in the time for building.
  const building = tasks.filter((t) => t.holdPoint !== 'season');
  if (building.length === 0) return { ...result, work: { ok: false, because: 'missing', paths: ['candidates'] } };
  const job = workPlanJob(workInputs(result.frame.value, building));
  return { ...result, work: { ok: false, because: 'pending', paths: [job.key] }, wanted: [job] };
}
