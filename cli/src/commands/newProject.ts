import { existsSync } from 'node:fs';
import { demos } from '@kneewall/demos';
import { emptyProject } from '@kneewall/project';
import { exitCodes, Refused } from '../exit.ts';
import { readOptions } from '../options.ts';
import { writeProject, writeWhole } from '../projectFile.ts';

/** `kneewall new FILE [--from DEMO]`: never overwrites. */
export async function newProject(args: readonly string[]): Promise<number> {
  const { values, positionals } = readOptions(args, { from: { type: 'string' } }, 1);
  const [file = ''] = positionals;
  if (existsSync(file)) throw new Refused(`${file} is there already and was left alone. Choose another name.`);
  if (values.from === undefined) await writeProject(file, emptyProject);
  else {
    const demo = demos.find((d) => d.id === values.from);
    if (!demo) throw new Refused(`There is no demo "${values.from}". There are: ${demos.map((d) => d.id).join(', ')}.`);
    await writeWhole(file, `${JSON.stringify(await demo.load(), null, 2)}\n`);
  }
  process.stdout.write(`${file} is ready. Next: kneewall check ${file}\n`);
  return exitCodes.nothingFails;
}
