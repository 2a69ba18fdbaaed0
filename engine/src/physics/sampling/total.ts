import { sobolPoints } from './sobol.ts';

/** Two independent sets of samples, each rows by dimensions. */
export type TwoSets = {
  readonly a: Float64Array;
  readonly b: Float64Array;
  readonly dimensions: number;
  readonly count: number;
};

export function twoSets(dimensions: number, count: number, seed: number): TwoSets {
  const both = sobolPoints(2 * dimensions, count, seed);
  const part = (offset: number): Float64Array =>
    Float64Array.from(
      { length: dimensions * count },
      (_, i) => both[Math.floor(i / dimensions) * 2 * dimensions + offset + (i % dimensions)] ?? 0,
    );
  return { a: part(0), b: part(dimensions), dimensions, count };
}

/** The row of a set in which one input, or none, is taken from the other set. `run` 0 is a, 1 is b, 2 + d is a with input d of b. */
export function rowOfRun(sets: TwoSets, run: number, row: number): Float64Array {
  const { dimensions: k } = sets;
  const base = (run === 1 ? sets.b : sets.a).slice(row * k, (row + 1) * k);
  if (run >= 2) base[run - 2] = sets.b[row * k + run - 2] ?? 0;
  return base;
}

/**
 * First-order and total indices from the outputs of a, of b, and of a with each input of b: first order by Saltelli and
 * others 2010, total by Jansen 1999 (from memory). A constant output gives noughts.
 */
export function totalIndices(
  a: Float64Array,
  b: Float64Array,
  mixed: readonly Float64Array[],
): { readonly first: number[]; readonly total: number[] } {
  const n = a.length;
  const mean = (a.reduce((s, y) => s + y, 0) + b.reduce((s, y) => s + y, 0)) / (2 * n);
  const variance = (a.reduce((s, y) => s + (y - mean) ** 2, 0) + b.reduce((s, y) => s + (y - mean) ** 2, 0)) / (2 * n);
  if (!(variance > 1e-18 * mean * mean)) return { first: mixed.map(() => 0), total: mixed.map(() => 0) };
  return {
    first: mixed.map((m) => m.reduce((s, y, i) => s + ((b[i] ?? 0) - mean) * (y - (a[i] ?? 0)), 0) / n / variance),
    total: mixed.map((m) => m.reduce((s, y, i) => s + (y - (a[i] ?? 0)) ** 2, 0) / (2 * n) / variance),
  };
}
