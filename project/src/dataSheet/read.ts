import { asked, type Path, type Problem, refused } from '../document/problem.ts';
import type { Entered } from '../schema/entered.ts';
import type { Project } from '../schema/project.ts';
import { splitTable } from '../table/splitTable.ts';
import { enteredIn, isBlank, numberIn, wordIn } from './cells.ts';
import { type ColumnId, columns, type Heading } from './columns.ts';
import { readHeadings } from './headings.ts';

export type SheetRows = NonNullable<NonNullable<NonNullable<Project['candidates']>[string]>['rows']>;
type SheetRow = SheetRows[string];

const rowsMost = 500;

/**
 * The rows of a unit's data sheet from a text table: one row a state, its first line the heads, units in brackets:
 * `capacity (Btu/h)`. Needs mode, speed, outdoor, capacity and power or COP. Faults are located by row and column of
 * the file and nothing is taken; a row that leaves out capacity or power is left out itself, and said.
 */
export function readDataSheet(text: string): { readonly value?: SheetRows; readonly problems: readonly Problem[] } {
  if (text.includes('\u0000'))
    return { problems: [refused('not-text', [], 'This is not text. Export the sheet as CSV.')] };
  const table = splitTable(text).map((cells, i) => ({ cells, row: i + 1 }));
  const [head, ...body] = table.filter(({ cells }) => cells.some((c) => c !== ''));
  if (!head) return { problems: [refused('missing-column', [], 'The file is empty.')] };
  if (body.length > rowsMost)
    return { problems: [refused('too-large', [], `More than ${rowsMost} rows: that is no data sheet of one unit.`)] };
  const { headings, problems: found } = readHeadings(head.cells, head.row);
  const problems = [...found];
  if (problems.some((p) => p.grade === 'refused')) return { problems };
  const rows = new Map<string, SheetRow>();
  for (const { cells, row } of body) {
    const read = readRow(headings, cells, row);
    problems.push(...read.problems);
    if (read.value) rows.set(freeId(rows, idOf(read.value)), { order: orderOf(rows.size), ...read.value });
  }
  if (problems.some((p) => p.grade === 'refused')) return { problems: oncePerColumn(problems) };
  if (rows.size === 0)
    return { problems: [...problems, refused('missing-column', [], 'There is no row with numbers in it.')] };
  return { value: Object.fromEntries(rows), problems };
}

type Numbers = Partial<Record<ColumnId, { readonly value: number; readonly as: string; readonly at: Path }>>;

function readRow(
  headings: readonly Heading[],
  cells: readonly string[],
  row: number,
): { value?: SheetRow; problems: Problem[] } {
  const problems: Problem[] = [];
  const words: Partial<Record<ColumnId, string>> = {};
  const numbers: Numbers = {};
  for (const heading of headings) {
    const cell = cells[heading.index] ?? '';
    const at = ['row', row, heading.text];
    if (isBlank(cell)) continue;
    if (columns[heading.id].words) {
      const read = wordIn(heading, cell, at);
      problems.push(...read.problems);
      if (read.value !== undefined) words[heading.id] = read.value;
    } else {
      const read = numberIn(heading, cell, at);
      problems.push(...read.problems);
      const as = heading.unit === undefined ? cell : `${cell} ${heading.unit}`;
      if (read.value !== undefined) numbers[heading.id] = { value: read.value, as, at };
    }
  }
  if (problems.length > 0) return { problems };
  const lacks = (['mode', 'speed', 'outdoor', 'capacity'] as const).filter((id) => !words[id] && !numbers[id]);
  const lacking = [...lacks, ...(numbers.power || numbers.cop ? [] : ['power'])];
  if (lacking.length > 0)
    return { problems: [asked('missing-column', ['row', row], `Left out: it states no ${lacking.join(', no ')}.`)] };
  return assemble(words, numbers);
}

function assemble(
  words: Partial<Record<ColumnId, string>>,
  numbers: Numbers,
): { value?: SheetRow; problems: Problem[] } {
  const derived = withDerived(numbers);
  const problems: Problem[] = [];
  const fields: Record<string, Entered | string> = {};
  for (const [id, word] of Object.entries(words)) fields[id] = word;
  for (const field of [
    'outdoor',
    'indoor',
    'indoorWetBulb',
    'capacity',
    'power',
    'airflow',
    'sensibleShare',
  ] as const) {
    const number = derived[field];
    if (!number) continue;
    const read = enteredIn(field, number.value, number.as, number.at);
    problems.push(...read.problems);
    if (read.value) fields[field] = read.value;
  }
  const { capacity, power } = derived;
  if (words.mode === 'heating' && capacity && power && capacity.value < power.value)
    problems.push(
      asked('implausible', power.at, 'It gives less heat than it draws. Look whether two columns are swapped.', {
        found: power.as,
      }),
    );
  return { value: fields as SheetRow, problems };
}

/** Power from the coefficient of performance and the sensible share from its capacity, where the sheet states those. */
function withDerived(numbers: Numbers): Numbers {
  const { capacity, sensibleCapacity, sensibleShare, power, cop } = numbers;
  const share =
    sensibleShare ??
    (capacity && sensibleCapacity && capacity.value > 0
      ? {
          ...sensibleCapacity,
          value: sensibleCapacity.value / capacity.value,
          as: `${sensibleCapacity.as} of ${capacity.as}`,
        }
      : undefined);
  const drawn =
    power ??
    (capacity && cop && cop.value > 0
      ? { ...cop, value: capacity.value / cop.value, as: `${capacity.as} at COP ${cop.as}` }
      : undefined);
  return { ...numbers, ...(share ? { sensibleShare: share } : {}), ...(drawn ? { power: drawn } : {}) };
}

/** `heating-most-minus-8-3` */
function idOf({ mode, speed, outdoor }: SheetRow): string {
  const t = Number(outdoor?.value ?? 0);
  const tenths = Math.round(Math.abs(t) * 10);
  const digits = tenths % 10 === 0 ? `${tenths / 10}` : `${Math.floor(tenths / 10)}-${tenths % 10}`;
  return `${mode}-${speed}-${t < 0 && tenths > 0 ? 'minus-' : ''}${digits}`;
}

function freeId(rows: ReadonlyMap<string, unknown>, id: string): string {
  let free = id;
  for (let n = 2; rows.has(free); n++) free = `${id}-${n}`;
  return free;
}

const orderOf = (n: number): string => `a${String(n).padStart(3, '0')}`;

/** A column without a unit is one fault, not one a row. */
function oncePerColumn(problems: readonly Problem[]): Problem[] {
  const key = (p: Problem): string => (p.code === 'wrong-unit' ? `${p.code} ${p.path.at(-1)}` : p.path.join(' '));
  return problems.filter((p, i) => problems.findIndex((q) => q.code === p.code && key(q) === key(p)) === i);
}
