import {
  coldMemo,
  evaluate,
  type Job,
  type LogAnswers,
  logFitKind,
  type Plan,
  type Results,
  runJob,
} from '@kneewall/engine';
import type { Project, System } from '@kneewall/project';
import { Refused } from './exit.ts';
import { readBlobs } from './planWithJobs.ts';

/** The log that ends last and what it taught; and the plan with the jobs of more kinds done, in their order. No others are run. */
export async function whatLogsTaught(
  project: Project,
  file: string,
  units: System,
  more: readonly string[],
): Promise<{ readonly plan: Plan; readonly found: LogAnswers; readonly name: string }> {
  if (Object.keys(project.logs ?? {}).length === 0)
    throw new Refused(`${file} has no log. Take one in: kneewall import log FILE --into ${file}`);
  const memo = coldMemo();
  const blobs = await readBlobs(project, file);
  let results: Results = Object.fromEntries([...blobs].map(([hash, value]) => [`blob:${hash}`, value]));
  let evaluated = evaluate(project, results, { units, memo });
  for (const kind of [logFitKind, ...more]) {
    const jobs = evaluated.wanted.filter((j) => j.kind === kind);
    results = { ...results, ...Object.fromEntries(jobs.map((job) => [job.key, finished(job, blobs)])) };
    evaluated = evaluate(project, results, { units, memo });
  }
  const told = (evaluated.plan.trades.commissioning?.logs ?? []).flatMap(({ name, learned }) =>
    learned.ok ? [{ name, found: learned.value }] : [],
  );
  const [last] = told.sort((a, b) => b.found.to - a.found.to);
  if (!last) throw new Refused(`${file}: its log is not at hand, or cannot be read.`);
  return { plan: evaluated.plan, ...last };
}

function finished(job: Job, blobs: ReadonlyMap<string, unknown>): unknown {
  const onTerminal = process.stderr.isTTY === true;
  const tell = (done: number, total: number): void => {
    if (onTerminal) process.stderr.write(`\r${job.kind}: ${done} of ${total}${done === total ? '\n' : ''}`);
  };
  return runJob(job, { blob: (hash) => blobs.get(hash), tell });
}
