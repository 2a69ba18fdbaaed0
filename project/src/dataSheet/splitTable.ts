/**
 * A text table: rows of trimmed cells. Quotes are honoured; the separator is whichever of , ; tab parts the first line
 * most. Where it is no comma and no number has a point, a comma inside a number is its decimal sign.
 */
export function splitTable(text: string): string[][] {
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  const head = lines.find((l) => l.trim() !== '') ?? '';
  const separator = [',', ';', '\t'].reduce((a, b) => (head.split(b).length > head.split(a).length ? b : a));
  const table = lines.map((line) => splitLine(line, separator));
  return separator !== ',' && commaIsDecimal(table) ? table.map((row) => row.map(withPoint)) : table;
}

function splitLine(line: string, separator: string): string[] {
  if (!line.includes('"')) return line.split(separator).map((c) => c.trim());
  const cells: string[] = [];
  let cell = '';
  let quoted = false;
  for (const c of line) {
    if (c === '"') quoted = !quoted;
    else if (c === separator && !quoted) {
      cells.push(cell.trim());
      cell = '';
    } else cell += c;
  }
  return [...cells, cell.trim()];
}

const isDecimalComma = (cell: string): boolean => /^-?\d+,\d+$/.test(cell);
const withPoint = (cell: string): string => (isDecimalComma(cell) ? cell.replace(',', '.') : cell);

function commaIsDecimal(table: readonly (readonly string[])[]): boolean {
  const some = (test: (cell: string) => boolean) => table.some((row) => row.some(test));
  return some(isDecimalComma) && !some((cell) => /^-?\d+\.\d+$/.test(cell));
}
