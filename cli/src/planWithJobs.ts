import {
  coldMemo,
  evaluate,
  type Job,
  JobRefused,
  needsSolver,
  type Plan,
  type Results,
  readRecorded,
  readWeather,
  runJob,
} from '@kneewall/engine';
import { encodingOf, type LogEntry, type LogRead, type Problem, type Project, type System } from '@kneewall/project';
import { readLogAt } from './logFile.ts';
import { problemLines } from './print/problems.ts';
import { blobPath, readBlob } from './projectFile.ts';
import { loadSolver } from './solver.ts';

const roundsMost = 4;

/** Which jobs are done without being asked for; with `long` all are. */
export const shortJobs =
  (long: boolean) =>
  (job: Job): boolean =>
    long || job.cost !== 'long';

/** Evaluates, does what the plan wants to know, and evaluates again; what could not be done stays pending. */
export async function planWithJobs(
  project: Project,
  file: string,
  units: System,
  doing: (job: Job) => boolean,
): Promise<Plan> {
  const memo = coldMemo();
  const blobs = await readBlobs(project, file);
  let results: Results = {};
  let evaluated = evaluate(project, results, { units, memo });
  for (let round = 0; round < roundsMost; round++) {
    const jobs = evaluated.wanted.filter((j) => !(j.key in results) && doing(j));
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

type Read = (text: string) => { readonly value?: unknown; readonly problems: readonly Problem[] };

/** The engine fetches nothing: the weather files and logs named in the project are read and parsed here; what is wrong with one is said. */
export async function readBlobs(project: Project, file: string): Promise<ReadonlyMap<string, unknown>> {
  const { site } = project;
  const blobs = new Map<string, unknown>();
  const take = async (blob: string | undefined, read: Read): Promise<void> => {
    if (blob === undefined || blobs.has(blob)) return;
    const bytes = await readBlob(file, blob);
    if (!bytes) return;
    const { value, problems } = read(new TextDecoder(encodingOf(bytes)).decode(bytes));
    if (value) blobs.set(blob, value);
    else process.stderr.write(`${problemLines(problems).join('\n')}\n`);
  };
  await take(site?.weather?.blob, (text) => readWeather(text, site?.weather ?? {}, site));
  for (const entry of Object.values(site?.recorded ?? {}))
    await take(entry.blob, (text) => readRecorded(text, entry, site));
  for (const entry of Object.values(project.logs ?? {})) {
    if (entry.blob === undefined || blobs.has(entry.blob)) continue;
    const read = logBeside(file, entry, site);
    if (read?.value) blobs.set(entry.blob, read.value);
    else if (read) process.stderr.write(`${problemLines(read.problems).join('\n')}\n`);
  }
  return blobs;
}

/** A log as it lies beside its project, read through; undefined where it is not at hand or not what its name says. */
function logBeside(file: string, entry: LogEntry, site: Project['site']): LogRead | undefined {
  try {
    const read = readLogAt(blobPath(file, entry.blob ?? ''), entry, site);
    return read.blob === entry.blob ? read : undefined;
  } catch {
    return undefined;
  }
}
