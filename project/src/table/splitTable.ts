/** Lines that one quoted cell may go over; a quote that is not closed by then is a sign like any other. */
const linesOfCell = 20;

/**
 * A text table: rows of trimmed cells. Quotes are honoured; the separator is whichever of , ; | tab parts the first line
 * most. Where it is no comma and no number has a point, a comma inside a number is its decimal sign.
 */
export function splitTable(text: string): string[][] {
  const { separator, rows } = splitCells(text);
  return separator !== ',' && commaIsDecimal(rows) ? rows.map((row) => row.map(withPoint)) : rows;
}

/**
 * The cells of a text table as they are written, trimmed, row by row: row i begins on line i. A quoted cell may hold
 * separators, doubled quotes and line ends; the lines it goes on over are empty rows. A quote inside a bare cell is an inch.
 */
export function splitCells(text: string): { readonly separator: string; readonly rows: string[][] } {
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  const head = lines.find((l) => l.trim() !== '') ?? '';
  const separator = [',', ';', '\t', '|'].reduce((a, b) => (head.split(b).length > head.split(a).length ? b : a));
  const rows: string[][] = [];
  for (let i = 0; i < lines.length; i++) {
    const line = lines[i] ?? '';
    if (!line.includes('"')) {
      rows.push(line.split(separator).map((c) => c.trim()));
      continue;
    }
    let last = i;
    let row = splitLine(line, separator);
    for (let to = i + 1; !row && to < lines.length && to <= i + linesOfCell; to++) {
      row = splitLine(lines.slice(i, to + 1).join('\n'), separator);
      if (row) last = to;
    }
    rows.push(row ?? line.split(separator).map((c) => c.trim()));
    for (; i < last; i++) rows.push([]);
  }
  return { separator, rows };
}

/** The cells of a row with quotes in it; nothing where one is still open at its end. */
function splitLine(line: string, separator: string): string[] | undefined {
  const cells: string[] = [];
  let cell = '';
  let quoted = false;
  for (let i = 0; i < line.length; i++) {
    const c = line[i] ?? '';
    if (quoted && c === '"' && line[i + 1] === '"') {
      cell += c;
      i++;
    } else if (c === '"' && (quoted || cell.trim() === '')) quoted = !quoted;
    else if (c === separator && !quoted) {
      cells.push(cell.trim());
      cell = '';
    } else cell += c;
  }
  return quoted ? undefined : [...cells, cell.trim()];
}

const isDecimalComma = (cell: string): boolean => /^-?\d+,\d+$/.test(cell);
const withPoint = (cell: string): string => (isDecimalComma(cell) ? cell.replace(',', '.') : cell);

function commaIsDecimal(table: readonly (readonly string[])[]): boolean {
  const some = (test: (cell: string) => boolean) => table.some((row) => row.some(test));
  return some(isDecimalComma) && !some((cell) => /^-?\d+\.\d+$/.test(cell));
}
