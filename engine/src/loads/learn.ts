import type { HouseYear } from '../coupling/houseYear/answers.ts';
import type { Job } from '../jobs/job.ts';
import type { Outcome } from '../plan/outcome.ts';
import type { Results } from '../plan/trade.ts';
import { type DesignDays, daysJobKind } from './dynamic/daysJob.ts';
import type { Study } from './dynamic/study.ts';
import { studyKind } from './dynamic/studyJob.ts';
import { houseYearKind } from './dynamic/yearJob.ts';
import type { LoadsResult } from './result.ts';

/** The loads with what their finished jobs found; the jobs still wanted are those that are not finished. */
export function learn(result: LoadsResult, found: Results): LoadsResult {
  const told = <T>(kind: string, before: Outcome<T>): Outcome<T> => {
    const job = result.wanted.find((j: Job) => j.kind === kind);
    return job && job.key in found ? { ok: true, value: found[job.key] as T } : before;
  };
  return {
    ...result,
    days: told<DesignDays>(daysJobKind, result.days),
    year: told<HouseYear>(houseYearKind, result.year),
    study: told<Study>(studyKind, result.study),
    wanted: result.wanted.filter((job) => !(job.key in found)),
  };
}
