import { csvCell } from '../materialsCsv.ts';

/** A list as a table: text is guarded against formulas, numbers are written as they are, what nobody knows stays empty. */
export type List = {
  readonly file: string;
  readonly title: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly (string | number | undefined)[])[];
};

const cell = (value: string | number | undefined): string =>
  typeof value === 'number' ? String(value) : csvCell(value ?? '');

/** The list by RFC 4180: commas, lines ended by CR LF, the heads first. */
export const listCsv = ({ heads, rows }: List): string =>
  [heads, ...rows].map((row) => `${row.map(cell).join(',')}\r\n`).join('');
