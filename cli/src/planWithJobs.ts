import {
  coldMemo,
  evaluate,
  type Job,
  JobRefused,
  needsSolver,
  type Plan,
  type Results,
  readWeather,
  runJob,
} from '@kneewall/engine';
import type { Project, System } from '@kneewall/project';
import { readBlob } from './projectFile.ts';
import { loadSolver } from './solver.ts';

const roundsMost = 4;

/** Evaluates, does what the plan wants to know, and evaluates again; what could not be done stays pending. */
export async function planWithJobs(project: Project, file: string, units: System, long: boolean): Promise<Plan> {
  const memo = coldMemo();
  const blobs = await readBlobs(project, file);
  let results: Results = {};
  let evaluated = evaluate(project, results, { units, memo });
  for (let round = 0; round < roundsMost; round++) {
    const jobs = evaluated.wanted.filter((j) => !(j.key in results) && (long || j.cost === 'short'));
    const done: (readonly [string, unknown])[] = [];
    for (const job of jobs) done.push(...(await finished(job, blobs)));
    if (done.length === 0) break;
    results = { ...results, ...Object.fromEntries(done) };
    evaluated = evaluate(project, results, { units, memo });
  }
  return evaluated.plan;
}

/** A job's result under its key; nothing, and a line for the person, where it cannot be done here. */
async function finished(job: Job, blobs: ReadonlyMap<string, unknown>): Promise<(readonly [string, unknown])[]> {
  const onTerminal = process.stderr.isTTY === true;
  const tell = (done: number, total: number): void => {
    if (onTerminal) process.stderr.write(`\r${job.kind}: ${done} of ${total}${done === total ? '\n' : ''}`);
  };
  try {
    const lent = { blob: (hash: string) => blobs.get(hash), tell };
    return [[job.key, runJob(job, needsSolver(job) ? { ...lent, solver: await loadSolver() } : lent)]];
  } catch (thrown) {
    if (!(thrown instanceof JobRefused)) throw thrown;
    process.stderr.write(`${thrown.message}\n`);
    return [];
  }
}

/** The engine fetches nothing: the weather file named in the project is read and parsed here. */
export async function readBlobs(project: Project, file: string): Promise<ReadonlyMap<string, unknown>> {
  const weather = project.site?.weather;
  if (weather?.blob === undefined) return new Map();
  const bytes = await readBlob(file, weather.blob);
  if (!bytes) return new Map();
  const { value } = readWeather(new TextDecoder().decode(bytes), weather, project.site);
  return value ? new Map([[weather.blob, value]]) : new Map();
}
