import type { Balancing } from '../coupling/balancing/system.ts';
import type { Results } from '../jobs/job.ts';
import type { Outcome } from '../plan/outcome.ts';
import type { ResponseTable } from './causes/table.ts';
import { learnLogs } from './logs/design.ts';
import type { CommissioningResult, Visit } from './result.ts';

/** The visits with the responses of their states, once those are known; what readings mean is told with the words. */
export function learn(result: CommissioningResult, found: Results): CommissioningResult {
  const visits = Object.entries(result.visits).map(([id, asked]): [string, Visit] => {
    const visit = withBalancing(asked, result, found);
    const key = visit.found.ok || visit.found.because !== 'pending' ? undefined : visit.found.paths[0];
    const table = key === undefined ? undefined : (found[key] as Outcome<ResponseTable> | undefined);
    if (table === undefined) return [id, visit];
    return [id, table.ok ? { ...visit, responses: table.value } : { ...visit, found: table }];
  });
  const logs = learnLogs(result.logs, result.wanted, found);
  return {
    ...result,
    logs,
    visits: Object.fromEntries(visits),
    wanted: result.wanted.filter((j) => !(j.key in found)),
  };
}

/** Dampers to move, where the job that was asked for them is done. */
function withBalancing(visit: Visit, { wanted }: CommissioningResult, found: Results): Visit {
  const { balancing } = visit;
  if (!balancing || balancing.found.ok || balancing.found.because !== 'pending') return visit;
  const [key = ''] = balancing.found.paths;
  const done = wanted.some((j) => j.key === key) ? (found[key] as Outcome<Balancing> | undefined) : undefined;
  return done === undefined ? visit : { ...visit, balancing: { ...balancing, found: done } };
}
