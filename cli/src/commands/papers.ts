import { existsSync } from 'node:fs';
import { mkdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { ductPlanSvg, oneLineSvg, trapSvg, workCalendar } from '@kneewall/documents';
import { evaluate, runJob, workPlanKind } from '@kneewall/engine';
import { exitCodes, Refused } from '../exit.ts';
import { readOptions } from '../options.ts';
import { readProject, writeWhole } from '../projectFile.ts';
import { unitsOf } from '../units.ts';

/** `kneewall papers FILE --out DIR [--units us|si]`: the sheets of a plan, each in a file of its own. */
export async function papers(args: readonly string[]): Promise<number> {
  const { values, positionals } = readOptions(args, { out: { type: 'string' }, units: { type: 'string' } }, 1);
  const [file = ''] = positionals;
  if (values.out === undefined || values.out === '')
    throw new Refused('Say where the papers go: --out DIR. See "kneewall help".');
  const { project } = await readProject(file);
  const units = unitsOf(values.units, project);
  const { plan, wanted } = evaluate(project, {}, { units });
  const job = wanted.find((j) => j.kind === workPlanKind);
  const host = { blob: () => undefined, tell: () => undefined };
  const worked = job ? evaluate(project, { [job.key]: runJob(job, host) }, { units }).plan : plan;
  await makeFolder(values.out);
  const lines = [await writeSheet(join(values.out, 'ducts.svg'), ductPlanSvg(plan, project, units))];
  const others = {
    'supply.svg': oneLineSvg(plan, project, units),
    'trap.svg': trapSvg(plan, project, units),
    'work-plan.ics': workCalendar(worked),
  };
  for (const [name, text] of Object.entries(others))
    if (text !== undefined) lines.push(await writeSheet(join(values.out, name), text));
  if (plan.trades.air?.flows.ok !== true)
    lines.push('Its flows are unknown so far; "kneewall check" says what is missing.');
  process.stdout.write(`${lines.join('\n')}\n`);
  return exitCodes.nothingFails;
}

async function makeFolder(folder: string): Promise<void> {
  try {
    await mkdir(folder, { recursive: true });
  } catch {
    throw new Refused(`Cannot make the folder ${folder}.`);
  }
}

/** Writes a sheet and says what became of one that was there. */
async function writeSheet(file: string, text: string): Promise<string> {
  const there = existsSync(file) ? await readFile(file, 'utf8').catch(() => '') : undefined;
  if (there === text) return `${file}: the same as before, left as it is.`;
  await writeWhole(file, text);
  return there === undefined ? `${file}: written.` : `${file}: written over the one that was there.`;
}
