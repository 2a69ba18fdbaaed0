import { shortages, type Waiting, waitingFor } from '../coupling/deliveries/waiting.ts';
import type { Task } from '../plan/lines.ts';
import { taskName } from '../plan/taskName.ts';
import type { Said } from '../plan/trade.ts';
import { paperWaiting } from './awaited.ts';
import { orderOf } from './order.ts';
import type { ScheduleResult, Unplaced, WorkFrame } from './result.ts';
import { progressBy } from './stages.ts';
import { lastMinute } from './ticks.ts';
import { workPlanJobs } from './workJob.ts';
import { takesWindow, withFollowers, workInputs } from './workSpec.ts';

/** The windows with the plan asked for that the tasks of all trades make, and how far they are. */
export function sum(result: ScheduleResult, { tasks, materials }: Pick<Said, 'tasks' | 'materials'>): ScheduleResult {
  if (!result.frame.ok) return result;
  // What every season asks for again has its days in the calendar of upkeep, not in the time for building.
  const building = tasks.filter(takesWindow);
  if (building.length === 0) return { ...result, work: { ok: false, because: 'missing', paths: ['candidates'] } };
  const frame = result.frame.value;
  const waiting = [...waitingFor(building, materials, frame), ...paperWaiting(building, frame.papers)];
  const [first, best] = workPlanJobs(workInputs(frame, building, waiting));
  const suffer = sufferers(building, waiting);
  const deadline = frame.doneBy ?? lastMinute(frame);
  return {
    ...result,
    work: { ok: false, because: 'pending', paths: [best.key] },
    wanted: [first, best],
    sum: {
      names: Object.fromEntries(tasks.map((t) => [t.id, taskName(t.what)])),
      ...progressBy(frame, tasks),
      within: tasks.flatMap(({ id, after, within }) =>
        within === undefined ? [] : [{ task: id, after, days: within }],
      ),
      late: suffer(frame.deliveries.filter((d) => d.at !== undefined && d.at >= deadline)),
      undated: suffer(frame.deliveries.filter((d) => d.at === undefined)),
      short: shortages(building, materials, frame),
    },
  };
}

/** Of deliveries, those that anything waits for, with these tasks and all that come after them. */
const sufferers = (tasks: readonly Task[], waiting: readonly Waiting[]) => (deliveries: WorkFrame['deliveries']) => {
  const order = orderOf(tasks);
  const ids = tasks.map((t) => t.id);
  return deliveries.flatMap(({ id: delivery }) => {
    const direct = waiting.flatMap((w): Unplaced[] =>
      w.on === 'delivery' && w.id === delivery ? [{ task: w.task, because: 'delivery' }] : [],
    );
    return direct.length === 0 ? [] : [{ delivery, tasks: withFollowers(direct, ids, order).map((u) => u.task) }];
  });
};
