import { evaluate, JobRefused, type Recorded, recordedKind, runJob } from '@kneewall/engine';
import type { Project } from '@kneewall/project';
import { Refused } from './exit.ts';
import { readBlobs } from './planWithJobs.ts';

/** The winters of the project's recorded years; undefined where it has none. What keeps them from being run is said. */
export async function recordedOf(project: Project, file: string): Promise<Recorded | undefined> {
  const blobs = await readBlobs(project, file);
  const parsed = Object.fromEntries([...blobs].map(([hash, value]) => [`blob:${hash}`, value]));
  const job = evaluate(project, parsed).wanted.find((j) => j.kind === recordedKind);
  if (!job) return undefined;
  const onTerminal = process.stderr.isTTY === true;
  const tell = (done: number, total: number): void => {
    if (onTerminal) process.stderr.write(`\rrecorded winters: ${done} of ${total}${done === total ? '\n' : ''}`);
  };
  try {
    return runJob(job, { blob: (hash) => blobs.get(hash), tell }) as Recorded;
  } catch (thrown) {
    if (thrown instanceof JobRefused) throw new Refused(thrown.message);
    throw thrown;
  }
}
