import type { ReactNode } from 'react';
import type { JobView } from '../../jobs/jobHost.ts';
import { Button } from '../../look/Button.tsx';
import { useJobs, useServices } from '../../services.ts';

/** `job`: its key, where several of a kind stand on one screen. */
type Props = { kind: string; job?: string | undefined; name: string; children: ReactNode };

/** Long work, offered where its answer will stand: it starts when somebody wants it, shows how far it is, and can be stopped. */
export function JobOffer({ kind, job: own, name, children }: Props) {
  const { jobs: host } = useServices();
  const job = useJobs((s) => s.jobs.find((j) => j.job.kind === kind && (own === undefined || j.job.key === own)));
  return (
    <>
      <p>{children}</p>
      {job?.state === 'failed' && <p className="not-known">{job.problem}</p>}
      {job && busy(job) && (
        <p className="job-running">
          <progress aria-label={name} {...(job.total > 0 ? { value: job.done, max: job.total } : {})} />
          {job.state !== 'running' && 'waits its turn'}
          <Button onClick={() => host.forgo(job.job.key)}>Stop</Button>
        </p>
      )}
      {job && !busy(job) && <Button onClick={() => host.start(job.job.key)}>Work it out</Button>}
    </>
  );
}

/** Short work starts by itself, so it waits where long work is offered. */
const busy = ({ state, job }: JobView): boolean =>
  state === 'running' || state === 'waiting' || (state === 'offered' && job.cost !== 'long');
