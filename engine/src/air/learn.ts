import type { Outcome } from '../plan/outcome.ts';
import type { Results } from '../plan/trade.ts';
import type { AirResult } from './result.ts';
import type { DuctSizing } from './sizing/sizeDucts.ts';
import { sizingKind } from './sizing/sizingJob.ts';

/** The ducts with their best sizes, once those are found. */
export function learn(result: AirResult, found: Results): AirResult {
  const job = result.wanted.find((j) => j.kind === sizingKind && j.key in found);
  if (!job) return result;
  return {
    ...result,
    sizing: found[job.key] as Outcome<DuctSizing>,
    wanted: result.wanted.filter((j) => j !== job),
  };
}
