import { existsSync } from 'node:fs';
import { demos } from '@kneewall/demos';
import { evaluate } from '@kneewall/engine';
import { emptyProject } from '@kneewall/project';
import { askAll } from '../ask/askAll.ts';
import { mayWrite, writeWhole } from '../disk.ts';
import { exitCodes, Refused } from '../exit.ts';
import { readOptions, unitsNamed } from '../options.ts';
import { firstAnswerLines } from '../print/firstAnswer.ts';
import { painter } from '../print/text.ts';
import { writeProject } from '../projectFile.ts';

/** `kneewall new FILE [--from DEMO | --ask]`: never overwrites. */
export async function newProject(args: readonly string[]): Promise<number> {
  const { values, positionals } = readOptions(
    args,
    { from: { type: 'string' }, ask: { type: 'boolean', default: false }, units: { type: 'string' } },
    1,
  );
  const [file = ''] = positionals;
  if (values.ask && values.from !== undefined) throw new Refused('Either --from or --ask, not both.');
  if (values.units !== undefined && !values.ask) throw new Refused('--units goes with --ask.');
  refuseTaken(file);
  if (values.ask) return await askedProject(file, values.units);
  if (values.from === undefined) await writeProject(file, emptyProject);
  else {
    const demo = demos.find((d) => d.id === values.from);
    if (!demo) throw new Refused(`There is no demo "${values.from}". There are: ${demos.map((d) => d.id).join(', ')}.`);
    await writeWhole(file, `${JSON.stringify(await demo.load(), null, 2)}\n`);
  }
  tellReady(file);
  return exitCodes.nothingFails;
}

/** A project from the first questions, and what it says so far. The file is written whole, after the last answer. */
async function askedProject(file: string, named: string | undefined): Promise<number> {
  const units = unitsNamed(named) ?? 'us';
  // Better known before the questions than after them.
  await mayWrite(file);
  const project = await askAll(units);
  refuseTaken(file);
  await writeProject(file, project);
  const { plan } = evaluate(project, {}, { units });
  const paint = painter(process.stdout.isTTY === true && process.env.NO_COLOR === undefined);
  process.stdout.write(`\n${firstAnswerLines(project, plan, units, paint).join('\n')}\n\n`);
  tellReady(file);
  return plan.findings.some((f) => f.because === 'fault') ? exitCodes.fault : exitCodes.nothingFails;
}

function refuseTaken(file: string): void {
  if (existsSync(file)) throw new Refused(`${file} is there already and was left alone. Choose another name.`);
}

const tellReady = (file: string): void => {
  process.stdout.write(`${file} is ready. Next: kneewall check ${file}\n`);
};
