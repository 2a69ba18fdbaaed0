import { evaluate, type Job } from '@kneewall/engine';
import type { Project } from '@kneewall/project';
import { Refused } from './exit.ts';
import { readBlobs } from './planWithJobs.ts';

/** A job of the plan's own, with the files it may borrow. Where the plan cannot ask for it yet, what it lacks is said. */
export async function wantedJob(
  project: Project,
  file: string,
  kind: string,
  outcome: 'year' | 'study',
): Promise<{ readonly job: Job; readonly blobs: ReadonlyMap<string, unknown> }> {
  const blobs = await readBlobs(project, file);
  const parsed = Object.fromEntries([...blobs].map(([hash, value]) => [`blob:${hash}`, value]));
  const { plan, wanted } = evaluate(project, parsed);
  const job = wanted.find((j) => j.kind === kind);
  if (job) return { job, blobs };
  const lacks = plan.trades.loads?.[outcome];
  const first = lacks && !lacks.ok ? lacks.paths.join(', ') : 'the house';
  throw new Refused(`${file}: the ${outcome} cannot be run yet. Enter first: ${first}.`);
}
