import type { Results } from '../jobs/job.ts';
import type { ScheduleResult, WorkAnswers } from './result.ts';
import { firstPlanKind, workPlanKind } from './workJob.ts';

/** The windows with the plan of their work, once it is found; until then the first one, beside it. */
export function learn(result: ScheduleResult, found: Results): ScheduleResult {
  const answers = (kind: string): WorkAnswers | undefined => {
    const job = result.wanted.find((j) => j.kind === kind);
    return job && (found[job.key] as WorkAnswers | undefined);
  };
  const best = answers(workPlanKind);
  if (best) return { ...result, work: { ok: true, value: best }, wanted: [] };
  const first = answers(firstPlanKind);
  return first ? { ...result, first, wanted: result.wanted.filter((j) => j.kind !== firstPlanKind) } : result;
}
