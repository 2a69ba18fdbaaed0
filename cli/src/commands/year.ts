import { houseYearKind, JobRefused, tableOfYear, type YearInputs, type YearTable } from '@kneewall/engine';
import type { Project } from '@kneewall/project';
import { mayWrite, writeWhole } from '../disk.ts';
import { exitCodes, Refused } from '../exit.ts';
import { readOptions } from '../options.ts';
import { recordedLines } from '../print/recorded.ts';
import { painter } from '../print/text.ts';
import { winterLines } from '../print/winters.ts';
import { yearCsv, yearLines } from '../print/year.ts';
import { readProject } from '../projectFile.ts';
import { recordedOf } from '../recordedOf.ts';
import { unitsOf } from '../units.ts';
import { wantedJob } from '../wantedJob.ts';
import { wintersOf } from '../wintersOf.ts';

/** `kneewall year FILE [--json] [--csv OUT] [--step SECONDS] [--winters]`: the house through a year, with what it takes and left to itself; twenty winters on own power, and recorded ones. */
export async function year(args: readonly string[]): Promise<number> {
  const { values, positionals } = readOptions(
    args,
    {
      json: { type: 'boolean', default: false },
      winters: { type: 'boolean', default: false },
      csv: { type: 'string' },
      step: { type: 'string', default: '900' },
      units: { type: 'string' },
    },
    1,
  );
  const [file = ''] = positionals;
  const step = Number(values.step);
  if (!Number.isInteger(step) || step < 60 || 3600 % step !== 0)
    throw new Refused(
      `--step is seconds that divide an hour, from 60 to 3600, not "${String(values.step).slice(0, 40)}".`,
    );
  const { project } = await readProject(file);
  if (values.csv !== undefined) await mayWrite(values.csv, [file]);
  const units = unitsOf(values.units, project);
  const table = await runYear(project, file, step);
  const winters = values.winters ? await wintersOf(project, file) : undefined;
  const recorded = values.winters ? await recordedOf(project, file) : undefined;
  if (values.csv !== undefined) await writeWhole(values.csv, yearCsv(table));
  if (values.json)
    process.stdout.write(
      `${JSON.stringify({ schema: 1, step, ...table.answers, ...(winters ? { winters } : {}), ...(recorded ? { recorded } : {}) })}\n`,
    );
  else {
    const paint = painter(process.stdout.isTTY === true && process.env.NO_COLOR === undefined);
    const lines = yearLines(project, table.answers, units, paint);
    const many = [
      ...(winters ? ['', ...winterLines(winters, units, paint)] : []),
      ...(recorded ? ['', ...recordedLines(recorded, units, paint)] : []),
    ];
    const written = values.csv === undefined ? [] : ['', `Every hour is in ${values.csv}.`];
    process.stdout.write(`${[...lines, ...many, ...written].join('\n')}\n`);
  }
  return exitCodes.nothingFails;
}

/** The plan's own year job, in steps of so many seconds.  */
async function runYear(project: Project, file: string, step: number): Promise<YearTable> {
  const { job, blobs } = await wantedJob(project, file, houseYearKind, 'year');
  const onTerminal = process.stderr.isTTY === true;
  const tell = (done: number, total: number): void => {
    if (onTerminal)
      process.stderr.write(`\rA year: ${Math.round((100 * done) / total)} %${done === total ? '\n' : ''}`);
  };
  try {
    return tableOfYear({ ...(job.inputs as YearInputs), step }, { blob: (hash) => blobs.get(hash), tell });
  } catch (thrown) {
    if (thrown instanceof JobRefused) throw new Refused(thrown.message);
    throw thrown;
  }
}
