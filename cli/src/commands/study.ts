import { readdir, stat } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { type Study, type StudyInputs, splitOf, studyKind } from '@kneewall/engine';
import { mayWrite, writeWhole } from '../disk.ts';
import { exitCodes, Refused } from '../exit.ts';
import { readOptions } from '../options.ts';
import { readProject } from '../projectFile.ts';
import { rowsByWorkers } from '../rowsByWorkers.ts';
import { wantedJob } from '../wantedJob.ts';

const most = 65_536;

/** `kneewall study FILE|DIR --samples N --seed S [--workers W] --out FILE`: the loads of many houses, each as it may be. */
export async function study(args: readonly string[]): Promise<number> {
  const { values, positionals } = readOptions(
    args,
    {
      samples: { type: 'string', default: '1024' },
      seed: { type: 'string', default: '1' },
      workers: { type: 'string' },
      out: { type: 'string' },
    },
    1,
  );
  const [place = ''] = positionals;
  const samples = wholeNumber('--samples', values.samples, 32, most);
  const seed = wholeNumber('--seed', values.seed, 0, 2 ** 31 - 1);
  const workers =
    values.workers === undefined ? availableParallelism() : wholeNumber('--workers', values.workers, 1, 64);
  if (values.out === undefined) throw new Refused('Say where the answers go: --out FILE.');
  const files = await projectsAt(place);
  await mayWrite(values.out, files);
  const studies: Record<string, Study> = {};
  for (const file of files) studies[file] = await studyFile(file, samples, seed, workers);
  await writeWhole(values.out, `${JSON.stringify({ schema: 1, samples, seed, studies }, null, 2)}\n`);
  process.stdout.write(`${values.out}: ${Object.keys(studies).length} of ${samples} samples each.\n`);
  return exitCodes.nothingFails;
}

function wholeNumber(name: string, text: string, least: number, highest: number): number {
  const n = Number(text);
  if (!Number.isInteger(n) || n < least || n > highest)
    throw new Refused(`${name} is a whole number from ${least} to ${highest}, not "${text.slice(0, 40)}".`);
  return n;
}

/** The file itself, or the projects in a folder by name. */
async function projectsAt(place: string): Promise<string[]> {
  const found = await stat(place).catch(() => undefined);
  if (!found?.isDirectory()) return [place];
  const names = (await readdir(place)).filter((n) => n.endsWith('.json')).sort();
  if (names.length === 0) throw new Refused(`There is no project in ${place}.`);
  return names.map((n) => join(place, n));
}

async function studyFile(file: string, samples: number, seed: number, workers: number): Promise<Study> {
  const { project } = await readProject(file);
  const { job } = await wantedJob(project, file, studyKind, 'study');
  const asked = { kind: job.kind, inputs: { ...(job.inputs as StudyInputs), samples, seed } };
  const split = splitOf(asked);
  if (!split) throw new Error('assert: a study can be split');
  return split.answers(await rowsByWorkers(asked, split.count, workers, file)) as Study;
}
