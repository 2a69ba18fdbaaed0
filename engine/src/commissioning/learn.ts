import type { Results } from '../plan/trade.ts';
import { learnLogs } from './logs/design.ts';
import type { CommissioningResult } from './result.ts';

/** The result with what finished jobs found; those are no longer wanted. */
export const learn = (result: CommissioningResult, found: Results): CommissioningResult => ({
  ...result,
  logs: learnLogs(result.logs, result.wanted, found),
  wanted: result.wanted.filter((j) => !(j.key in found)),
});
