import { mkdir } from 'node:fs/promises';
import { dirname } from 'node:path';
import { readWeather, sniffWeather, type WeatherFormat } from '@kneewall/engine';
import { applyEdit, hashOfBytes, type Project, valueAt } from '@kneewall/project';
import { exitCodes, Refused } from '../exit.ts';
import { readOptions } from '../options.ts';
import { problemLines } from '../print/problems.ts';
import { blobPath, readBytes, readProject, writeProject, writeWhole } from '../projectFile.ts';

const formats: readonly WeatherFormat[] = ['tmy3', 'psm3', 'pvgis-csv', 'pvgis-json', 'hourly'];

/** `kneewall import weather FILE --into PROJECT`: checks the whole file first; a refused one leaves everything as it was. */
export async function importFile(args: readonly string[]): Promise<number> {
  const { values, positionals } = readOptions(args, { into: { type: 'string' }, format: { type: 'string' } }, 2);
  const [kind, file = ''] = positionals;
  if (kind !== 'weather')
    throw new Refused(`There is nothing to import called "${String(kind).slice(0, 40)}". There is: weather.`);
  if (values.into === undefined) throw new Refused('Say which project takes it: --into PROJECT.');
  const { project } = await readProject(values.into);
  const bytes = await readBytes(file);
  const text = new TextDecoder().decode(bytes);
  const format = formatOf(values.format) ?? sniffWeather(text);
  const read = readWeather(text, { ...project.site?.weather, format }, project.site);
  if (!read.value) throw new Refused(`${file} was not taken; ${values.into} is unchanged.`, read.problems);
  const hash = hashOfBytes(bytes);
  const blob = blobPath(values.into, hash);
  await mkdir(dirname(blob), { recursive: true });
  await writeWhole(blob, bytes);
  await writeProject(values.into, withWeather(project, { blob: hash, name: read.value.name, format }));
  const questions = read.problems.length > 0 ? `\n${problemLines(read.problems).join('\n')}` : '';
  process.stdout.write(`${values.into} now uses ${read.value.name}: ${read.value.dryBulb.length} rows.${questions}\n`);
  return exitCodes.nothingFails;
}

function formatOf(asked: string | undefined): WeatherFormat | undefined {
  if (asked === undefined) return undefined;
  const found = formats.find((f) => f === asked);
  if (!found)
    throw new Refused(`There is no weather format "${asked.slice(0, 40)}". There are: ${formats.join(', ')}.`);
  return found;
}

function withWeather(project: Project, weather: { blob: string; name: string; format: WeatherFormat }): Project {
  const path = ['site', 'weather'];
  const before = valueAt(project, path);
  const edit = {
    device: 'command-line',
    seq: 1,
    path,
    before,
    after: { ...(before as object | undefined), ...weather },
  };
  const { value, problems } = applyEdit(project, edit);
  if (problems.length > 0) throw new Refused('The project did not take the weather.', problems);
  return value;
}
