import type { Matrix } from './matrix.ts';

/**
 * Elimination in the order laid out, carrying the right-hand side along. No pivoting: every row is dominated by its
 * diagonal. Rows with up to three entries, which are most, have loops of their own. Nodes are records of six numbers:
 * diagonal, right-hand side, inverse of the diagonal, unknown, pressure, need.
 */
export function eliminate(m: Matrix): void {
  const { runs, nodes: n, columns, upper, lower, pairs, start, symmetric } = m;
  let t = 0;
  for (let r = 0; r < runs.length; r += 3) {
    const end = runs[r + 2]!;
    if (runs[r] === 1)
      for (let k = runs[r + 1]!, o = k * 6, x = start[k]!; k < end; k++, o += 6, x++) {
        const i = columns[x]!;
        const v = 1 / n[o]!;
        const c = lower[x]! * v;
        n[o + 2] = v;
        n[i] = n[i]! - c * upper[x]!;
        n[i + 1] = n[i + 1]! - c * n[o + 1]!;
      }
    else if (runs[r] === 2)
      for (let k = runs[r + 1]!, o = k * 6, x = start[k]!; k < end; k++, o += 6, x += 2, t++) {
        const i = columns[x]!;
        const j = columns[x + 1]!;
        const u = pairs[t]!;
        const v = 1 / n[o]!;
        const b = n[o + 1]!;
        const near = upper[x]!;
        const far = upper[x + 1]!;
        const c = lower[x]! * v;
        const d = lower[x + 1]! * v;
        n[o + 2] = v;
        n[i] = n[i]! - c * near;
        n[j] = n[j]! - d * far;
        upper[u] = upper[u]! - c * far;
        if (!symmetric) lower[u] = lower[u]! - d * near;
        n[i + 1] = n[i + 1]! - c * b;
        n[j + 1] = n[j + 1]! - d * b;
      }
    else if (runs[r] === 3 && symmetric) t = eliminateThree(m, runs[r + 1]!, end, t);
    else t = eliminateAny(m, runs[r + 1]!, end, t);
  }
}

function eliminateThree(m: Matrix, begin: number, end: number, pair: number): number {
  const { nodes: n, columns, upper, pairs, start } = m;
  let t = pair;
  for (let k = begin, o = k * 6, x = start[k]!; k < end; k++, o += 6, x += 3, t += 3) {
    const h = columns[x]!;
    const i = columns[x + 1]!;
    const j = columns[x + 2]!;
    const v = 1 / n[o]!;
    const b = n[o + 1]! * v;
    const p = upper[x]!;
    const q = upper[x + 1]!;
    const r = upper[x + 2]!;
    const d = p * v;
    const e = q * v;
    n[o + 2] = v;
    n[h] = n[h]! - d * p;
    n[i] = n[i]! - e * q;
    n[j] = n[j]! - r * v * r;
    n[h + 1] = n[h + 1]! - b * p;
    n[i + 1] = n[i + 1]! - b * q;
    n[j + 1] = n[j + 1]! - b * r;
    upper[pairs[t]!] = upper[pairs[t]!]! - d * q;
    upper[pairs[t + 1]!] = upper[pairs[t + 1]!]! - d * r;
    upper[pairs[t + 2]!] = upper[pairs[t + 2]!]! - e * r;
  }
  return t;
}

function eliminateAny(m: Matrix, begin: number, end: number, pair: number): number {
  const { nodes: n, columns, upper, lower, pairs, start, symmetric } = m;
  let t = pair;
  for (let k = begin, o = k * 6; k < end; k++, o += 6) {
    const last = start[k + 1]!;
    const v = 1 / n[o]!;
    const b = n[o + 1]!;
    n[o + 2] = v;
    for (let x = start[k]!; x < last; x++) {
      const i = columns[x]!;
      const c = lower[x]! * v;
      const near = upper[x]!;
      n[i] = n[i]! - c * near;
      n[i + 1] = n[i + 1]! - c * b;
      for (let y = x + 1; y < last; y++, t++) {
        const u = pairs[t]!;
        upper[u] = upper[u]! - c * upper[y]!;
        if (!symmetric) lower[u] = lower[u]! - lower[y]! * v * near;
      }
    }
  }
  return t;
}

/** The unknowns of an eliminated matrix, from the last to the first; added to the pressures. */
export function substitute(m: Matrix): void {
  const { nodes: n, columns, upper, start, size } = m;
  for (let k = size - 1, o = k * 6; k >= 0; k--, o -= 6) {
    let sum = n[o + 1]!;
    for (let x = start[k]!, last = start[k + 1]!; x < last; x++) sum -= upper[x]! * n[columns[x]! + 3]!;
    const change = sum * n[o + 2]!;
    n[o + 3] = change;
    n[o + 4] = n[o + 4]! + change;
  }
}
