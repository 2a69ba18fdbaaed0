import { dirname } from 'node:path';
import { readRecorded, sniffWeather } from '@kneewall/engine';
import { hashOfBytes } from '@kneewall/project';
import { makeFolder, mayWrite, writeWhole } from '../disk.ts';
import { Refused } from '../exit.ts';
import { problemLines } from '../print/problems.ts';
import { blobPath, readBytes, readProject, withPart, writeProject } from '../projectFile.ts';
import { formatOf } from './importWeather.ts';

/** Years that were measured into a project, all or none: each file goes beside it, the project names them. */
export async function importRecorded(files: readonly string[], into: string, asked: string | undefined): Promise<void> {
  let { project } = await readProject(into);
  const taken: { hash: string; bytes: Uint8Array }[] = [];
  const questions: string[] = [];
  for (const file of files) {
    const bytes = await readBytes(file);
    const text = new TextDecoder().decode(bytes);
    const name = (file.split(/[\\/]/).at(-1) ?? file).slice(0, 200);
    const hash = hashOfBytes(bytes);
    const entry = { blob: hash, name, format: formatOf(asked) ?? sniffWeather(text) };
    const read = readRecorded(text, entry, project.site);
    if (!read.value) throw new Refused(`${file} was not taken; ${into} is unchanged.`, read.problems);
    questions.push(...problemLines(read.problems));
    taken.push({ hash, bytes });
    // Named by its content: the same file taken twice is one year.
    project = withPart(project, ['site', 'recorded', `year-${hash.slice(0, 12)}`], () => entry);
  }
  await mayWrite(into);
  await makeFolder(dirname(blobPath(into, 'any')));
  for (const { hash, bytes } of taken) await writeWhole(blobPath(into, hash), bytes);
  await writeProject(into, project);
  const many = Object.keys(project.site?.recorded ?? {}).length;
  const said = questions.length > 0 ? `\n${questions.join('\n')}` : '';
  process.stdout.write(`${into} now has ${many} recorded ${many === 1 ? 'year' : 'years'}.${said}\n`);
}
