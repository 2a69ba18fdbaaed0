import { readFileSync } from 'node:fs';

/**
 * A number as it stands in a printed table, and half of its last decimal: nearer than that nobody can hold it. A whole
 * number stands for itself.
 */
export type Printed = { readonly value: number; readonly half: number };

/** Rows of a table kept as text beside its check, by the names in its first line. */
export function printedTable(file: URL): Readonly<Record<string, Printed>>[] {
  const [head = '', ...lines] = readFileSync(file, 'utf8').trim().split('\n');
  const names = head.split(',');
  return lines.map((line) =>
    Object.fromEntries(line.split(',').map((cell, i) => [names[i] ?? '', printed(cell.trim())])),
  );
}

function printed(cell: string): Printed {
  const decimals = cell.split('.')[1]?.length;
  return { value: Number(cell), half: decimals === undefined ? 1e-9 : 0.5 * 10 ** -decimals };
}
