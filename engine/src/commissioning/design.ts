import type { Job } from '../jobs/job.ts';
import { attempt, unresolved } from '../plan/outcome.ts';
import { asBuilt, type Input } from './asBuilt.ts';
import { askBalancing } from './balancing/askBalancing.ts';
import { logsOf } from './logs/design.ts';
import { responsesJob } from './responsesJob.ts';
import type { CommissioningResult, Visit } from './result.ts';
import { startUpOf } from './startUp/startUp.ts';
import { visitsOf } from './visits.ts';

/** The visits with what was read at each, and for each the job that says what its readings mean. Pure. */
export function design(input: Input): CommissioningResult {
  const { visits, loose } = visitsOf(input.project, input.upstream.climate.pressure);
  const { logs, wanted: fits } = logsOf(input.project, input.upstream.equipment, input.upstream.climate.pressure);
  const wanted: Job[] = [...fits];
  const want = (job: Job): void => {
    if (wanted.every((j) => j.key !== job.key)) wanted.push(job);
  };
  const asked = Object.fromEntries(
    Object.entries(visits).map(([id, read]): [string, Visit] => {
      const balancing = askBalancing(input, read);
      if (balancing?.job) want(balancing.job);
      const visit = balancing ? { ...read, balancing: balancing.asked } : read;
      const job = attempt(() => {
        if (visit.aside) return unresolved('missing', `visits.${id}.minutes`);
        return responsesJob(asBuilt(input, visit));
      });
      if (!job.ok) return [id, { ...visit, found: job }];
      want(job.value);
      return [id, { ...visit, found: { ok: false, because: 'pending', paths: [job.value.key] } }];
    }),
  );
  return { startUp: startUpOf(input, Object.values(visits)), visits: asked, loose, logs, workings: {}, wanted };
}
