// Source: test functions whose indices are known in closed form (Ishigami & Homma 1990; Sobol's g-function). See README.md.
import { firstOrderIndices, rowOfRun, sobolPoints, totalIndices, twoSets } from '@kneewall/engine/physics';
import { type Row, row, type ValidationSource } from '../src/row.ts';

const id = 'sensitivity';
const seed = 11;

/** A function of numbers from 0 to 1, and its first-order and total indices. */
type Known = {
  readonly name: string;
  readonly of: (x: ArrayLike<number>) => number;
  readonly first: readonly number[];
  readonly total: readonly number[];
};

function ishigami(): Known {
  const [a, b] = [7, 0.1];
  const v1 = 0.5 * (1 + (b * Math.PI ** 4) / 5) ** 2;
  const v2 = a ** 2 / 8;
  const v13 = b ** 2 * Math.PI ** 8 * (1 / 18 - 1 / 50);
  const v = v1 + v2 + v13;
  return {
    name: 'Ishigami',
    of: (x) => {
      const [p, q, r] = Array.from({ length: 3 }, (_, i) => Math.PI * (2 * (x[i] ?? 0) - 1));
      return Math.sin(p ?? 0) + a * Math.sin(q ?? 0) ** 2 + b * (r ?? 0) ** 4 * Math.sin(p ?? 0);
    },
    first: [v1 / v, v2 / v, 0],
    total: [(v1 + v13) / v, v2 / v, v13 / v],
  };
}

function gFunction(): Known {
  const a = [0, 1, 4.5, 9, 99, 99, 99, 99];
  const own = a.map((x) => 1 / (3 * (1 + x) ** 2));
  const whole = own.reduce((p, v) => p * (1 + v), 1);
  return {
    name: 'g-function',
    of: (x) => a.reduce((p, ai, i) => (p * (Math.abs(4 * (x[i] ?? 0) - 2) + ai)) / (1 + ai), 1),
    first: own.map((v) => v / (whole - 1)),
    total: own.map((v) => (v * (whole / (1 + v))) / (whole - 1)),
  };
}

function additive(): Known {
  const weights = [4, 2, 1, 0.5];
  const all = weights.reduce((s, w) => s + w * w, 0);
  const shares = weights.map((w) => (w * w) / all);
  return { name: 'sum', of: (x) => weights.reduce((s, w, i) => s + w * (x[i] ?? 0), 0), first: shares, total: shares };
}

function rowsOf(f: Known): Row[] {
  const k = f.first.length;
  const samples = sobolPoints(k, 4096, seed);
  const outputs = Float64Array.from({ length: 4096 }, (_, i) => f.of(samples.subarray(i * k, (i + 1) * k)));
  const binned = firstOrderIndices(samples, outputs, k);
  const sets = twoSets(k, 1024, seed);
  const runs = Array.from({ length: k + 2 }, (_, run) =>
    Float64Array.from({ length: 1024 }, (_x, i) => f.of(rowOfRun(sets, run, i))),
  );
  const [a = new Float64Array(), b = new Float64Array(), ...mixed] = runs;
  const { first, total } = totalIndices(a, b, mixed);
  const check = (field: string, expected: number, ours: number, tolerance: number): Row =>
    row({ source: id, case: f.name, field, unit: '', expected, tolerance, known: 'computed' }, ours);
  return f.first.flatMap((expected, i) => [
    check(`first order of input ${i + 1}, 4096 samples in groups`, expected, binned[i] ?? Number.NaN, 0.02),
    check(`first order of input ${i + 1}, 1024 rows`, expected, first[i] ?? Number.NaN, 0.05),
    check(`total of input ${i + 1}, 1024 rows`, f.total[i] ?? 0, total[i] ?? Number.NaN, 0.05),
  ]);
}

export const source: ValidationSource = {
  id,
  title: 'Sensitivity indices',
  measure: () => [ishigami(), gFunction(), additive()].flatMap(rowsOf),
};
