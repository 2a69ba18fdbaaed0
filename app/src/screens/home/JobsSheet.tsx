import { Button } from '../../look/Button.tsx';
import { useJobs, useServices } from '../../services.ts';
import './JobsSheet.css';

/** What each kind of job finds out. */
const kindWord: Readonly<Record<string, string>> = {
  'climate/year': 'The weather year, hour by hour',
  'loads/days': 'The cold night and the hot day, hour by hour',
  'loads/year': 'The house through a year',
  'commissioning/balancing': 'Which dampers to move',
  'commissioning/responses': 'What readings mean',
  'commissioning/log-fit': 'What a log teaches',
  'materials/cut-plan': 'How board, metal, lengths and bags are cut',
  'coupling/unit-year': 'A year with the chosen unit and these ducts',
  'coupling/winters': 'Twenty winters on your own power',
  'coupling/ways': 'The ducts sealed, wrapped, buried, made anew, or kept inside',
  'coupling/improvements': 'What could be done to the house, in every combination',
  'coupling/power-year': 'A year on your own power',
  'coupling/power-helps': 'What would help your own power, change by change',
  'coupling/grid-year': 'A year on the grid',
  'coupling/foresight': 'What smarter control of your own power could save',
  'coupling/recorded-winters': 'The recorded winters on your own power',
  'access/passage': 'Whether each box finds its way in',
  'air/balance': 'Where dampers go, and how far they are shut',
  'air/sizing': 'The best stocked size of every duct',
  'coupling/log-effect': 'What a log changes in the plan',
  'schedule/first-plan': 'A first plan of the work',
  'schedule/work-plan': 'Which work fits which of your windows',
  'loads/study': 'A thousand houses, each as this one may be',
  'loads/totals': 'What the first unknowns do together',
};

/** Computations under way: how far they are, and a way to stop each or to start it again. */
export function JobsSheet() {
  const { jobs: host } = useServices();
  const all = useJobs((s) => s.jobs);
  // Long work that nobody asked for yet is offered where its answer will stand.
  const jobs = all.filter((j) => j.state !== 'offered');
  if (jobs.length === 0) return null;
  return (
    <section className="moved" aria-labelledby="jobs-title">
      <h2 id="jobs-title">Being worked out</h2>
      <ul className="jobs">
        {jobs.map(({ job, state, done, total, problem }) => (
          <li key={job.key}>
            <span>
              {kindWord[job.kind] ?? job.kind}
              {state === 'failed' && <>: {problem}</>}
              {state === 'stopped' && ': stopped'}
              {state === 'waiting' && ': waits its turn'}
            </span>
            {state === 'running' && (
              <>
                <progress
                  aria-label={kindWord[job.kind] ?? job.kind}
                  {...(total > 0 ? { value: done, max: total } : {})}
                />
                <Button onClick={host.stop}>Stop</Button>
              </>
            )}
            {state === 'waiting' && <Button onClick={() => host.forgo(job.key)}>Stop</Button>}
            {(state === 'failed' || state === 'stopped') && (
              <Button onClick={() => host.start(job.key)}>Work it out</Button>
            )}
          </li>
        ))}
      </ul>
    </section>
  );
}
