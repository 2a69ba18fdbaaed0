import { basename } from 'node:path';
import { evaluate } from '@kneewall/engine';
import { idPattern, inOrder, type Project, readDataSheet, type SheetRows } from '@kneewall/project';
import { Refused } from '../exit.ts';
import { problemLines } from '../print/problems.ts';
import { wrap } from '../print/text.ts';
import { readBytes, readProject, withPart, writeProject } from '../projectFile.ts';

/** The rows of a unit's data sheet into a project: into the unit named, or a new one named for the file. */
export async function importDataSheet(file: string, into: string, asked: string | undefined): Promise<void> {
  const { project } = await readProject(into);
  const unit = asked ?? idOf(file);
  if (!idPattern.test(unit))
    throw new Refused(`"${unit.slice(0, 40)}" is no id. Use small letters, digits and dashes: --unit ID.`);
  const { value, problems } = readDataSheet(new TextDecoder().decode(await readBytes(file)));
  if (!value) throw new Refused(`${file} was not taken; ${into} is unchanged.`, problems);
  const before = project.candidates?.[unit]?.rows;
  const after = withRows(project, unit, value, nameOf(file));
  await writeProject(into, after);
  const count = (rows: SheetRows): number => Object.keys(rows).length;
  const replaced = before === undefined ? '' : ` They replace the ${count(before)} it had.`;
  const lines = [
    ...wrap(`${into}: the unit “${unit}” has ${count(value)} rows from ${file}.${replaced}`, 78),
    ...problemLines(problems),
    ...gapLines(after, unit),
  ];
  process.stdout.write(`${lines.join('\n')}\n`);
}

/** A file's name without what kind it is. */
const nameOf = (file: string): string => basename(file).replace(/\.[^.]*$/, '');

/** `The 24 (sheet).csv` gives `the-24-sheet`. */
const idOf = (file: string): string =>
  nameOf(file)
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 64);

function withRows(project: Project, unit: string, rows: SheetRows, name: string): Project {
  if (project.candidates?.[unit]) return withPart(project, ['candidates', unit, 'rows'], () => rows);
  // After the last: an order key that sorts behind every other.
  const last = inOrder(project.candidates ?? {}).at(-1)?.[1].order;
  const order = last === undefined ? 'a00' : `${last}0`;
  return withPart(project, ['candidates', unit], () => ({ order, name: name.slice(0, 200), rows }));
}

/** What the sheet still leaves open, in the plan's own words. */
function gapLines(project: Project, unit: string): string[] {
  const found = evaluate(project, {}).plan.findings.find((f) => f.id === `equipment/data-gaps:${unit}`);
  return found ? ['', ...wrap(found.what, 78), ...(found.status === 'ok' ? [] : wrap(`Mend: ${found.mend}`, 78))] : [];
}
