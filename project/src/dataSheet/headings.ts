import { asked, type Problem, refused } from '../document/problem.ts';
import { parseQuantity } from '../quantity/index.ts';
import { type ColumnId, columnNamed, columns, type Heading, splitHeading } from './columns.ts';

const needed: readonly ColumnId[] = ['mode', 'speed', 'outdoor', 'capacity'];

/** The columns of a sheet by its first row; `row` is where that stands in the file. */
export function readHeadings(
  cells: readonly string[],
  row: number,
): { readonly headings: readonly Heading[]; readonly problems: readonly Problem[] } {
  const problems: Problem[] = [];
  const headings: Heading[] = [];
  cells.forEach((text, index) => {
    if (text === '') return;
    const { name, unit } = splitHeading(text);
    const id = columnNamed(name);
    const at = ['row', row, text];
    if (!id) problems.push(asked('unknown-field', at, 'This column is not read; the others are.'));
    else if (headings.some((h) => h.id === id))
      problems.push(refused('duplicate-key', at, `Two columns are ${name}. Keep one of the two.`));
    else {
      headings.push({ id, index, text, ...(unit === undefined ? {} : { unit }) });
      problems.push(...unitProblems(id, unit, at));
    }
  });
  return { headings, problems: [...problems, ...missingColumns(headings, row)] };
}

function unitProblems(id: ColumnId, unit: string | undefined, at: readonly (string | number)[]): Problem[] {
  const { kind, example } = columns[id];
  if (unit === undefined || kind === undefined) return [];
  const parsed = parseQuantity(`1 ${unit}`, kind);
  if (parsed.ok) return [];
  const readings = parsed.readings?.map((r) => `“${r.text.replace(/^1 /, '')}”`).join(' or ');
  const mend = readings
    ? `The unit “${unit}” may mean ${readings}. Write which.`
    : `The unit “${unit}” does not fit. Write it like: ${example}.`;
  return [refused('wrong-unit', at, mend, { found: unit })];
}

function missingColumns(headings: readonly Heading[], row: number): Problem[] {
  const has = (id: ColumnId): boolean => headings.some((h) => h.id === id);
  const lacks = needed.filter((id) => !has(id)).map((id) => columns[id].example);
  if (!has('power') && !has('cop')) lacks.push(`${columns.power.example} or ${columns.cop.example}`);
  return lacks.map((name) => refused('missing-column', ['row', row], `Add a column headed: ${name}.`));
}
