import { type Problem, refused } from '../document/problem.ts';
import { type DateOrder, ordersOf } from './dates.ts';

/** How a text table is written. Columns count from 0; `time` has two where day and hour stand apart. */
export type Dialect = {
  readonly delimiter: string;
  readonly decimal: '.' | ',';
  readonly heads: readonly string[];
  /** Line of the first row, from 1. */
  readonly firstLine: number;
  readonly time: readonly number[];
  /** All ways in which its days may be read: more than one must be asked. */
  readonly orders: readonly DateOrder[];
  /** The first rows, as text. */
  readonly sample: readonly (readonly string[])[];
  /** `1.000` and the like only: nobody can say whether that is one or a thousand. */
  readonly decimalUnsure: boolean;
};

const otherKinds: readonly (readonly [RegExp, string])[] = [
  [/^PK[^\w\s]/, 'This is a workbook or a packed file, not text. Open it and save the sheet as CSV.'],
  [/^%PDF/, 'This is a PDF. A log is a table of text: export it as CSV.'],
  [/^\s*[{[]/, 'This is JSON. A log is a table of text, one row a line: export it as CSV.'],
  [/^\s*</, 'This is a web page or XML. A log is a table of text, one row a line: export it as CSV.'],
];

/** Splits one line as the reader does, quotes left out. */
export function cellsOfLine(line: string, delimiter: string): string[] {
  const cells: string[] = [];
  let at = 0;
  while (at <= line.length) {
    const quoted = line[at] === '"';
    const close = quoted ? line.indexOf('"', at + 1) : -1;
    const from = quoted ? at + 1 : at;
    const next = line.indexOf(delimiter, quoted && close > 0 ? close : at);
    const end = next < 0 ? line.length : next;
    cells.push(line.slice(from, quoted && close > 0 ? Math.min(close, end) : end).trim());
    at = end + 1;
  }
  return cells;
}

const looksNumeric = (cell: string): boolean => /^[-+]?[\d.,]*\d(\s*[^\d\s.,]{1,4})?$/.test(cell);

/**
 * Looks how a log is written, in the first part of its text (64 kB are plenty; the last part may follow after a line break, so that
 * later days settle how days are written). Refuses in words what is no table with a column of moments.
 */
export function sniffLog(head: string, tail = ''): { readonly dialect?: Dialect; readonly problem?: Problem } {
  const text = head.replace(/^\uFEFF/, '');
  for (const [kind, mend] of otherKinds) if (kind.test(text)) return { problem: refused('unknown-format', [], mend) };
  if (text.includes('\u0000')) return { problem: refused('not-text', [], 'This is not text. Export the log as CSV.') };
  const lines = text.split(/\r\n|\n|\r/).slice(0, 400);
  if (head.length > 1000 && lines.length > 2) lines.pop();
  const found = (['\t', ';', ',', '|'] as const)
    .map((delimiter) => tableOf(lines, delimiter))
    .filter((t) => t !== undefined)
    .sort((a, b) => b.width - a.width || b.rows.length - a.rows.length)[0];
  if (!found)
    return {
      problem: refused(
        'unknown-format',
        [],
        'No column of dates and times was found. A log has one row a moment, each beginning or ending with its date and time.',
      ),
    };
  const last = tail
    .split(/\r\n|\n|\r/)
    .slice(1)
    .map((l) => cellsOfLine(l, found.delimiter));
  const rows = [...found.rows, ...last.filter((r) => r.length === found.width)];
  const time = rows.map((r) => found.time.map((c) => r[c]).join(' ')).filter((t) => /\d/.test(t));
  const settled = ordersOf(time.filter((t) => ordersOf([t]).length > 0));
  const numbers = rows.flatMap((r) => r.filter((c, i) => !found.time.includes(i) && looksNumeric(c)));
  const commas = found.delimiter !== ',' && numbers.some((c) => /,\d+$/.test(c));
  const dots = numbers.filter((c) => c.includes('.'));
  return {
    dialect: {
      delimiter: found.delimiter,
      decimal: commas ? ',' : '.',
      heads: found.heads,
      firstLine: found.firstLine,
      time: found.time,
      orders: settled,
      sample: found.rows.slice(0, 200),
      decimalUnsure:
        !commas && found.delimiter !== ',' && dots.length > 20 && dots.every((c) => /^[-+]?\d{1,3}(\.\d{3})+$/.test(c)),
    },
  };
}

type Table = {
  readonly delimiter: string;
  readonly width: number;
  readonly heads: readonly string[];
  readonly firstLine: number;
  readonly time: readonly number[];
  readonly rows: readonly (readonly string[])[];
};

function tableOf(lines: readonly string[], delimiter: string): Table | undefined {
  const split = lines.map((l) => cellsOfLine(l, delimiter));
  const first = split.findIndex((cells) => cells.length > 1 && timeIn(cells).length > 0 && cells.some(looksNumeric));
  if (first < 0) return undefined;
  const width = split[first]?.length ?? 0;
  const rows = split.slice(first).filter((cells) => cells.length === width);
  // The heads: the last line before with about as many cells; a line of units below them is joined to them.
  const above = split.slice(0, first).filter((cells) => cells.length >= width - 1 && cells.some((c) => c !== ''));
  const names = above.at(-1) ?? [];
  const units =
    above.length > 1 && names.every((c) => c.length < 8) && names.some((c) => /^[[(]?(°?[CF]|k?Wh?|%)[\])]?$/.test(c));
  const heads = Array.from({ length: width }, (_, i) =>
    units
      ? `${above.at(-2)?.[i] ?? ''} (${(names[i] ?? '').replace(/[[\]()]/g, '')})`.replace(' ()', '')
      : (names[i] ?? `Column ${i + 1}`),
  );
  return { delimiter, width, heads, firstLine: first + 1, time: timeIn(split[first] ?? []), rows };
}

/** The column, or the two columns, that say when. */
function timeIn(cells: readonly string[]): readonly number[] {
  const dated = cells.findIndex((c) => ordersOf([c]).length > 0);
  if (dated < 0) return [];
  const next = cells[dated + 1] ?? '';
  const whole = /:/.test(cells[dated] ?? '');
  return !whole && /^\d{1,2}:\d{2}(:\d{2})?(\s*[AaPp][Mm])?$/.test(next) ? [dated, dated + 1] : [dated];
}
