import type { Job, Results } from '../jobs/job.ts';
import type { Outcome } from '../plan/outcome.ts';
import { balanceKind } from './balance/balanceJob.ts';
import type { AirBalance } from './balance/result.ts';
import type { AirResult } from './result.ts';
import type { DuctSizing } from './sizing/sizeDucts.ts';
import { sizingKind } from './sizing/sizingJob.ts';

/** The ducts with their best sizes and the settings of their dampers, once those are found. */
export function learn(result: AirResult, found: Results): AirResult {
  const done = (kind: string): Job | undefined => result.wanted.find((j) => j.kind === kind && j.key in found);
  const [sizing, balance] = [done(sizingKind), done(balanceKind)];
  if (!sizing && !balance) return result;
  return {
    ...result,
    ...(sizing ? { sizing: found[sizing.key] as Outcome<DuctSizing> } : {}),
    ...(balance ? { balance: found[balance.key] as Outcome<AirBalance> } : {}),
    wanted: result.wanted.filter((j) => j !== sizing && j !== balance),
  };
}
