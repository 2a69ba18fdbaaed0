import type { HouseYear } from '../coupling/houseYear/answers.ts';
import type { Job, Results } from '../jobs/job.ts';
import type { Outcome } from '../plan/outcome.ts';
import { byDays } from './byDays.ts';
import { type DesignDays, daysJobKind } from './dynamic/daysJob.ts';
import type { Study, StudyInputs } from './dynamic/study.ts';
import { studyKind, type Totals, totalsJob, totalsKind, totalsOf } from './dynamic/studyJob.ts';
import { houseYearKind } from './dynamic/yearJob.ts';
import type { LoadsResult } from './result.ts';

/** The loads with what their finished jobs found. A finished study asks for the totals of what it ranked first. */
export function learn(result: LoadsResult, found: Results): LoadsResult {
  const of = (kind: string): Job | undefined => result.wanted.find((j) => j.kind === kind && j.key in found);
  const told = <T>(kind: string, before: Outcome<T>): Outcome<T> => {
    const job = of(kind);
    return job ? { ok: true, value: found[job.key] as T } : before;
  };
  const study = of(studyKind);
  const next = study && totalsJob(totalsOf(study.inputs as StudyInputs, found[study.key] as Study));
  const days = told<DesignDays>(daysJobKind, result.days);
  return {
    ...(days.ok && !result.days.ok ? byDays(result, days.value) : result),
    days,
    year: told<HouseYear>(houseYearKind, result.year),
    study: told<Study>(studyKind, result.study),
    totals: next ? { ok: false, because: 'pending', paths: [next.key] } : told<Totals>(totalsKind, result.totals),
    wanted: [...result.wanted.filter((job) => !(job.key in found)), ...(next ? [next] : [])],
  };
}
