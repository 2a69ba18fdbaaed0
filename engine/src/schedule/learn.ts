import type { Results } from '../plan/trade.ts';
import type { ScheduleResult, WorkAnswers } from './result.ts';

/** The windows with the plan of their work, once it is found. */
export function learn(result: ScheduleResult, found: Results): ScheduleResult {
  const [job] = result.wanted;
  if (!job || !(job.key in found)) return result;
  return { ...result, work: { ok: true, value: found[job.key] as WorkAnswers }, wanted: [] };
}
