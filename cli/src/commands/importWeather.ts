import { dirname } from 'node:path';
import { readWeather, sniffWeather, type WeatherFormat } from '@kneewall/engine';
import { hashOfBytes } from '@kneewall/project';
import { makeFolder, mayWrite, writeWhole } from '../disk.ts';
import { Refused } from '../exit.ts';
import { problemLines } from '../print/problems.ts';
import { blobPath, readBytes, readProject, withPart, writeProject } from '../projectFile.ts';

const formats: readonly WeatherFormat[] = ['tmy3', 'psm3', 'pvgis-csv', 'pvgis-json', 'hourly'];

/** A weather year into a project: the file goes beside it, the project names it. */
export async function importWeather(file: string, into: string, asked: string | undefined): Promise<void> {
  const { project } = await readProject(into);
  const bytes = await readBytes(file);
  const text = new TextDecoder().decode(bytes);
  const format = formatOf(asked) ?? sniffWeather(text);
  const read = readWeather(text, { ...project.site?.weather, format }, project.site);
  if (!read.value) throw new Refused(`${file} was not taken; ${into} is unchanged.`, read.problems);
  const hash = hashOfBytes(bytes);
  const blob = blobPath(into, hash);
  await mayWrite(into);
  await makeFolder(dirname(blob));
  await writeWhole(blob, bytes);
  const weather = { blob: hash, name: read.value.name, format };
  await writeProject(
    into,
    withPart(project, ['site', 'weather'], (before) => ({ ...(before as object | undefined), ...weather })),
  );
  const questions = read.problems.length > 0 ? `\n${problemLines(read.problems).join('\n')}` : '';
  process.stdout.write(`${into} now uses ${read.value.name}: ${read.value.dryBulb.length} rows.${questions}\n`);
}

export function formatOf(asked: string | undefined): WeatherFormat | undefined {
  if (asked === undefined) return undefined;
  const found = formats.find((f) => f === asked);
  if (!found)
    throw new Refused(`There is no weather format "${asked.slice(0, 40)}". There are: ${formats.join(', ')}.`);
  return found;
}
