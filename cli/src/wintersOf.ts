import { availableParallelism } from 'node:os';
import { evaluate, JobRefused, splitOf, type Winters, wintersKind } from '@kneewall/engine';
import type { Project } from '@kneewall/project';
import { Refused } from './exit.ts';
import { readBlobs } from './planWithJobs.ts';
import { rowsByWorkers } from './rowsByWorkers.ts';

/** The plan's own winters, on all cores. What keeps them from being run is said. */
export async function wintersOf(project: Project, file: string): Promise<Winters> {
  const blobs = await readBlobs(project, file);
  const parsed = Object.fromEntries([...blobs].map(([hash, value]) => [`blob:${hash}`, value]));
  const { plan, wanted } = evaluate(project, parsed);
  const job = wanted.find((j) => j.kind === wintersKind);
  const split = job && splitOf(job);
  if (!job || !split) {
    const { winters } = plan.season;
    const lacks = winters.ok ? [] : winters.paths;
    throw new Refused(
      `${file}: the winters on own power cannot be run yet. Enter first: ${lacks.join(', ') || 'the power'}.`,
    );
  }
  try {
    return split.answers(await rowsByWorkers(job, split.count, availableParallelism(), 'winters')) as Winters;
  } catch (thrown) {
    if (thrown instanceof JobRefused) throw new Refused(thrown.message);
    throw thrown;
  }
}
