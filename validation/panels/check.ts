import { type How, type Row, row } from '../src/row.ts';

/** A row of this source. */
export const check = (
  name: string,
  field: string,
  unit: string,
  [expected, tolerance]: readonly [number, number],
  ours: number,
  known: How = 'computed',
): Row => row({ source: 'panels', case: name, field, unit, expected, tolerance, known }, ours);
