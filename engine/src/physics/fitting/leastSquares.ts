import { EigenvalueDecomposition, inverse, Matrix } from 'ml-matrix';
import { normalOf } from './normalOf.kernel.ts';
import { studentT } from './studentT.ts';

/** A straight regression: coefficients in the order of the columns, their errors, and what is left over. */
export type LeastSquares = {
  readonly coefficients: readonly number[];
  readonly standardErrors: readonly number[];
  /** (XᵀX)⁻¹, row by row. */
  readonly spread: readonly (readonly number[])[];
  readonly residuals: Float64Array;
  /** Of the residuals, with n − p degrees of freedom. */
  readonly deviation: number;
  readonly freedom: number;
  readonly r2: number;
  /** How far apart the scaled columns' strongest and weakest directions are; 1 is best, above about 30 is weak. */
  readonly condition: number;
};

/**
 * Ordinary least squares of y on columns of equal length (put a column of ones in for a constant). Undefined where there are
 * no more rows than columns, or the columns hang on each other to rounding.
 */
export function leastSquares(columns: readonly ArrayLike<number>[], y: ArrayLike<number>): LeastSquares | undefined {
  const n = y.length;
  const p = columns.length;
  if (n <= p) return undefined;
  const lengths = columns.map((c) => Math.sqrt(dot(c, c)));
  if (lengths.some((x) => !(x > 0))) return undefined;
  const scaled = columns.map((c, j) => Float64Array.from(c, (v) => v / (lengths[j] ?? 1)));
  const { normal, towards } = normalOf(scaled, Float64Array.from(y));
  const matrix = Matrix.from1DArray(p, p, normal);
  const squares = new EigenvalueDecomposition(matrix, { assumeSymmetric: true }).realEigenvalues;
  const most = Math.max(...squares);
  const least = Math.min(...squares);
  if (!(least > 1e-13 * most)) return undefined;
  const back = inverse(matrix);
  const solved = back.mmul(Matrix.columnVector(towards)).to1DArray();
  // Once more for what is left, since squaring the columns squares their rounding too.
  const rest = Float64Array.from(y, (v, i) => v - sumAt(scaled, solved, i));
  const more = back.mmul(Matrix.columnVector(normalOf(scaled, rest).towards)).to1DArray();
  const coefficients = solved.map((b, j) => (b + (more[j] ?? 0)) / (lengths[j] ?? 1));
  const residuals = Float64Array.from(y, (v, i) => v - sumAt(columns, coefficients, i));
  const spread = back.to2DArray().map((row, i) => row.map((v, j) => v / ((lengths[i] ?? 1) * (lengths[j] ?? 1))));
  const freedom = n - p;
  const left = dot(residuals, residuals);
  const deviation = Math.sqrt(left / freedom);
  const mean = sum(y) / n;
  const all = sum(Float64Array.from(y, (v) => (v - mean) ** 2));
  return {
    coefficients,
    standardErrors: spread.map((row, i) => deviation * Math.sqrt(row[i] ?? Number.NaN)),
    spread,
    residuals,
    deviation,
    freedom,
    r2: 1 - left / all,
    condition: Math.sqrt(most / least),
  };
}

/** Half the width of a coefficient's interval by Student's t. */
export const coefficientHalfWidth = (fit: LeastSquares, column: number, level: number): number =>
  studentT(level, fit.freedom) * (fit.standardErrors[column] ?? Number.NaN);

/** The fitted value at a row, and the standard error of a new observation there. */
export function predict(fit: LeastSquares, row: readonly number[]): { readonly value: number; readonly error: number } {
  const value = row.reduce((a, v, j) => a + v * (fit.coefficients[j] ?? 0), 0);
  const lever = row.reduce((a, v, i) => a + v * row.reduce((b, w, j) => b + w * (fit.spread[i]?.[j] ?? 0), 0), 0);
  return { value, error: fit.deviation * Math.sqrt(1 + lever) };
}

const sumAt = (columns: readonly ArrayLike<number>[], b: readonly number[], i: number): number =>
  columns.reduce((a, c, j) => a + (c[i] ?? 0) * (b[j] ?? 0), 0);

function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let s = 0;
  for (let i = 0; i < a.length; i++) s += (a[i] ?? 0) * (b[i] ?? 0);
  return s;
}

function sum(a: ArrayLike<number>): number {
  let s = 0;
  for (let i = 0; i < a.length; i++) s += a[i] ?? 0;
  return s;
}
