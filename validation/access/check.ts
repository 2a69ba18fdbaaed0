import { type How, type Row, row } from '../src/row.ts';

export const id = 'access';
export const inch = 0.0254;
export const pound = 0.45359237;
/** Pa. */
export const poundSquareInch = 6894.757;
export const poundSquareFoot = 47.88026;

export const check = (
  name: string,
  field: string,
  unit: string,
  expected: number,
  tolerance: number,
  ours: number,
  known: How = 'computed',
): Row => row({ source: id, case: name, field, unit, expected, tolerance, known }, ours);
