import { type ColumnMap, type PriceColumn, priceChanges, priceColumns, readPrices } from '@kneewall/project';
import { Refused } from '../exit.ts';
import { problemLines } from '../print/problems.ts';
import { wrap } from '../print/text.ts';
import { readBytes, readProject, withPart, writeProject } from '../projectFile.ts';

/** Prices out of a table into a project: new ones beside those it has, known ones changed. Rows left out are listed. */
export async function importPrices(file: string, into: string, asked: string | undefined): Promise<void> {
  const { project } = await readProject(into);
  const read = readPrices(new TextDecoder().decode(await readBytes(file)), columnsOf(asked));
  if (read.taken.length === 0)
    throw new Refused(`${file} was not taken; ${into} is unchanged.`, [
      ...read.problems,
      ...read.left.map((l) => l.problem),
    ]);
  const changes = priceChanges(project, read);
  const before = project.work?.prices ?? {};
  const entries = Object.fromEntries(changes.map((c) => [c.path.at(-1) ?? '', c.after]));
  await writeProject(
    into,
    withPart(project, ['work', 'prices'], () => ({ ...before, ...entries })),
  );
  const changed = changes.filter((c) => (c.path.at(-1) ?? '') in before).length;
  const rows = read.left.length === 1 ? '1 row was' : `${read.left.length} rows were`;
  const lines = [
    ...wrap(`${into}: ${changes.length - changed} new prices from ${file}, ${changed} changed.`, 78),
    ...(read.left.length > 0 ? [`${rows} left out:`] : []),
    ...problemLines([...read.problems, ...read.left.map((l) => l.problem)]),
  ];
  process.stdout.write(`${lines.join('\n')}\n`);
}

/** `name=Artikel,price=Preis`: which head stands for which column. */
function columnsOf(asked: string | undefined): ColumnMap {
  const map: Partial<Record<PriceColumn, string>> = {};
  for (const pair of asked === undefined ? [] : asked.split(',')) {
    const [, column, head] = /^\s*([^=]*?)\s*=\s*(.+?)\s*$/.exec(pair) ?? [];
    const known = priceColumns.find((c) => c === column);
    if (!known || head === undefined)
      throw new Refused(`--columns takes pairs like name=Article,price=Net; columns are: ${priceColumns.join(', ')}.`);
    map[known] = head;
  }
  return map;
}
