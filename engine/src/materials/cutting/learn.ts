import type { Results } from '../../jobs/job.ts';
import type { MaterialsResult } from '../result.ts';
import { cutKind } from './cutJob.ts';
import type { CutAnswers } from './result.ts';

/** The pieces, once they are laid out. */
export function learn(result: MaterialsResult, found: Results): MaterialsResult {
  const job = result.wanted.find((j) => j.kind === cutKind && j.key in found);
  if (!job) return result;
  return {
    ...result,
    cut: { ok: true, value: found[job.key] as CutAnswers },
    wanted: result.wanted.filter((j) => j !== job),
  };
}
