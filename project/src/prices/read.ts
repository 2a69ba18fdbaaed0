import { asked, echo, type Problem, refused } from '../document/problem.ts';
import type { Project } from '../schema/project.ts';
import { splitCells } from '../table/splitTable.ts';
import { type ColumnMap, findColumns, type PriceColumn } from './heads.ts';
import { decimalsOf, priceIn } from './money.ts';

type Price = NonNullable<NonNullable<Project['work']>['prices']>[string];

/** A row that was not taken, as it stands in the file, and why. */
export type RowLeft = { readonly row: number; readonly cells: readonly string[]; readonly problem: Problem };

export type PricesRead = {
  readonly taken: readonly { readonly row: number; readonly entry: Price }[];
  readonly left: readonly RowLeft[];
  /** Heads of the file, for choosing columns where they are not known. */
  readonly heads: readonly string[];
  /** Of the file as a whole: refused, nothing is taken. */
  readonly problems: readonly Problem[];
};

const rowsMost = 2000;
const longest = 200;
const none = { taken: [], left: [] } as const;

/**
 * Prices out of a text table of any separator and decimal sign, its first line the heads, or `columns` saying which is
 * which. Needs a name and a price. Every row that is not blank is either taken or left with its place and reason.
 */
export function readPrices(text: string, columns: ColumnMap = {}): PricesRead {
  const problem = notText(text);
  if (problem) return { ...none, heads: [], problems: [problem] };
  const rows = splitCells(text).rows.map((cells, i) => ({ cells: cells.map(unguarded), row: i + 1 }));
  const [head, ...body] = rows.filter(({ cells }) => cells.some((c) => c !== ''));
  if (!head) return { ...none, heads: [], problems: [refused('missing-column', [], 'The file is empty.')] };
  const at = findColumns(head.cells, columns);
  const lacks = (['name', 'price'] as const).filter((c) => at[c] === undefined);
  if (lacks.length > 0) return { ...none, heads: head.cells, problems: lacks.map((c) => noColumn(c, head.row)) };
  if (body.length > rowsMost)
    return {
      ...none,
      heads: head.cells,
      problems: [refused('too-large', [], `More than ${rowsMost} rows: keep those that you may buy.`)],
    };
  return { ...readRows(body, at), heads: head.cells, problems: doubtful(text) };
}

type Row = { readonly cells: readonly string[]; readonly row: number };

function readRows(body: readonly Row[], at: Partial<Record<PriceColumn, number>>): Pick<PricesRead, 'taken' | 'left'> {
  const cell = (row: Row, column: PriceColumn): string => row.cells[at[column] ?? -1] ?? '';
  const decimals = decimalsOf(body.map((row) => cell(row, 'price')));
  const taken: { row: number; entry: Price }[] = [];
  const left: RowLeft[] = [];
  const seen = new Map<string, number>();
  for (const row of body) {
    const [name, price, unit] = [cell(row, 'name'), cell(row, 'price'), cell(row, 'unit')];
    const leave = (column: string, mend: string, found?: unknown): void => {
      const problem = asked(
        'impossible-value',
        ['row', row.row, column],
        mend,
        found === undefined ? {} : { found: echo(found) },
      );
      left.push({ ...row, problem });
    };
    const read = priceIn(price, decimals);
    const first = seen.get(sameKey(name, unit));
    if (name === '') leave('name', 'It has no name.');
    else if (name.length > longest || unit.length > longest)
      leave('name', `Its words are longer than ${longest} signs.`);
    else if (!('price' in read)) leave('price', reasons[read.why], price);
    else if (read.price < 0) leave('price', 'The price is negative.', price);
    else if (read.price === 0) leave('price', 'The price is 0: nothing is free, ask the shop.', price);
    else if (first !== undefined) leave('name', `It stands in row ${first} already.`, name);
    else {
      seen.set(sameKey(name, unit), row.row);
      taken.push({ row: row.row, entry: entryOf(name, read.price, price, unit, cell(row, 'shop'), cell(row, 'line')) });
    }
  }
  return { taken, left };
}

const reasons = {
  empty: 'It has no price.',
  words: 'The price is not a number.',
  'two-readings': 'The price may mean thousands or thousandths: write it without a sign between thousands.',
} as const;

/** Two prices are of one thing where name and pack are the same words. */
export const sameKey = (name = '', unit = ''): string => `${name}|${unit}`.toLowerCase().replaceAll(/\s+/g, ' ');

const shopWords: Readonly<Record<string, NonNullable<Price['shop']>>> = {
  merchant: 'merchant',
  'building merchant': 'merchant',
  heating: 'heating',
  'heating and ventilation supplier': 'heating',
  electrical: 'electrical',
  'electrical supplier': 'electrical',
  dealer: 'dealer',
  'dealer or maker of the unit': 'dealer',
};

function entryOf(name: string, value: number, as: string, unit: string, shopCell: string, line: string): Price {
  const shop = shopWords[shopCell.toLowerCase()];
  return {
    name,
    ...(unit === '' ? {} : { unit }),
    price: { value, known: 'nameplate', as: as.slice(0, 80) },
    ...(shop === undefined ? {} : { shop }),
    ...(line === '' || line.length > longest ? {} : { line }),
  };
}

/** The sign that our own tables put before a cell which a spreadsheet would run; taken off again, and nothing else. */
const unguarded = (cell: string): string => cell.replace(/^'(?=\s*[=+\-@\t\r＝＋－＠])/, '');

function notText(text: string): Problem | undefined {
  const wide = text.startsWith('\uFFFD\uFFFD') || text.startsWith('\uFFFE') || text.includes('\u0000');
  return wide
    ? refused('not-text', [], 'This is not UTF-8 text; it may be UTF-16. Save it again as CSV in UTF-8.')
    : undefined;
}

const doubtful = (text: string): Problem[] =>
  text.includes('\uFFFD')
    ? [
        asked(
          'not-text',
          [],
          'Some signs could not be read and show as \uFFFD. Save the file as UTF-8 and take it again.',
        ),
      ]
    : [];

const noColumn = (column: PriceColumn, row: number): Problem =>
  refused('missing-column', ['row', row], `No column is headed “${column}”. Say which column it is, or head one so.`);
