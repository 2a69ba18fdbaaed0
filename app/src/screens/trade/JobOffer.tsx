import type { ReactNode } from 'react';
import type { JobView } from '../../jobs/jobHost.ts';
import { Button } from '../../look/Button.tsx';
import { useJobs, useServices } from '../../services.ts';

/** Long work, offered where its answer will stand: it starts when somebody wants it, shows how far it is, and can be stopped. */
export function JobOffer({ kind, name, children }: { kind: string; name: string; children: ReactNode }) {
  const { jobs: host } = useServices();
  const job = useJobs((s) => s.jobs.find((j) => j.job.kind === kind));
  return (
    <>
      <p>{children}</p>
      {job?.state === 'failed' && <p className="not-known">{job.problem}</p>}
      {job && busy(job) && (
        <p className="job-running">
          <progress aria-label={name} {...(job.total > 0 ? { value: job.done, max: job.total } : {})} />
          {job.state === 'waiting' && 'waits its turn'}
          <Button onClick={() => host.forgo(job.job.key)}>Stop</Button>
        </p>
      )}
      {job && !busy(job) && <Button onClick={() => host.start(job.job.key)}>Work it out</Button>}
    </>
  );
}

const busy = ({ state }: JobView): boolean => state === 'running' || state === 'waiting';
