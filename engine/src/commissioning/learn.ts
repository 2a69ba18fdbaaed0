import type { Outcome } from '../plan/outcome.ts';
import type { Results } from '../plan/trade.ts';
import type { ResponseTable } from './causes/table.ts';
import { learnLogs } from './logs/design.ts';
import type { CommissioningResult, Visit } from './result.ts';

/** The visits with the responses of their states, once those are known; what readings mean is told with the words. */
export function learn(result: CommissioningResult, found: Results): CommissioningResult {
  const visits = Object.entries(result.visits).map(([id, visit]): [string, Visit] => {
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
