import { type How, type Row, row } from './row.ts';

/** One row of a source: its case, field and unit, what is expected and how near, ours, and how the value is known. */
export type Check = (
  name: string,
  field: string,
  unit: string,
  expected: number,
  tolerance: number,
  ours: number | undefined,
  known?: How,
) => Row;

/** Rows of one source. What we cannot say is not ok. */
export const checker =
  (source: string): Check =>
  (name, field, unit, expected, tolerance, ours, known = 'computed') =>
    row({ source, case: name, field, unit, expected, tolerance, known }, ours ?? Number.NaN);
