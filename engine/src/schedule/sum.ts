import { waitingFor } from '../coupling/deliveries/waiting.ts';
import { taskName } from '../plan/taskName.ts';
import type { Said } from '../plan/trade.ts';
import type { ScheduleResult } from './result.ts';
import { progressBy } from './stages.ts';
import { workPlanJob } from './workJob.ts';
import { workInputs } from './workSpec.ts';

/** The windows with the plan asked for that the tasks of all trades make, and how far they are. */
export function sum(result: ScheduleResult, { tasks, materials }: Pick<Said, 'tasks' | 'materials'>): ScheduleResult {
  if (!result.frame.ok) return result;
  // What every season asks for again has its days in the calendar of upkeep, not in the time for building.
  const building = tasks.filter((t) => t.holdPoint !== 'season');
  if (building.length === 0) return { ...result, work: { ok: false, because: 'missing', paths: ['candidates'] } };
  const frame = result.frame.value;
  const waiting = waitingFor(building, materials, frame);
  const job = workPlanJob(workInputs(frame, building, waiting));
  const { doneBy = Number.POSITIVE_INFINITY } = frame;
  return {
    ...result,
    work: { ok: false, because: 'pending', paths: [job.key] },
    wanted: [job],
    sum: {
      names: Object.fromEntries(tasks.map((t) => [t.id, taskName(t.what)])),
      ...progressBy(frame, tasks),
      late: frame.deliveries
        .filter((d) => d.at >= doneBy)
        .map((d) => ({ delivery: d.id, tasks: waiting.flatMap((w) => (w.delivery === d.id ? [w.task] : [])) }))
        .filter((d) => d.tasks.length > 0),
    },
  };
}
