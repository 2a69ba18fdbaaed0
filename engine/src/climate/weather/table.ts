/** A text table: rows of trimmed cells. Quotes are honoured; the separator is whichever of , ; tab parts the first line most. */
export function splitTable(text: string): string[][] {
  const lines = text.replace(/^\uFEFF/, '').split(/\r\n|\n|\r/);
  const head = lines.find((l) => l.trim() !== '') ?? '';
  const separator = [',', ';', '\t'].reduce((a, b) => (head.split(b).length > head.split(a).length ? b : a));
  return lines.map((line) => splitLine(line, separator));
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
