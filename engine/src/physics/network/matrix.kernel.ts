import type { CompiledNetwork } from './compiled.ts';

/**
 * The matrix of a Newton step: every passage, straightened at its flow, in the balance of air of its two nodes.
 * Records: see `memory.ts` (6 numbers a node, 6 a passage).
 */
export function assemble({ memory: m, regions, matrix, passages }: CompiledNetwork): void {
  const { upper, lower } = regions;
  const { ends, count } = passages;
  for (let t = upper; t < regions.passages; t++) m[t] = 0;
  for (let i = 0; i < upper; i += 6) {
    m[i] = 0;
    m[i + 1] = -m[i + 5]!;
  }
  for (let p = 0, x = regions.passages, c = 0; p < count; p++, x += 6, c += 4) {
    const g = m[x + 2]!;
    const q = m[x]! + g * m[x + 1]!;
    const a = m[x + 3]!;
    const b = m[x + 4]!;
    const i = ends[c]!;
    const j = ends[c + 1]!;
    const t = ends[c + 2]!;
    m[i] = m[i]! + a * g;
    m[i + 1] = m[i + 1]! - a * q;
    m[j] = m[j]! + b * g;
    m[j + 1] = m[j + 1]! + b * q;
    m[t] = m[t]! - g * (i < j ? a : b);
    if (!matrix.symmetric) m[t + lower - upper] = m[t + lower - upper]! - g * (i < j ? b : a);
  }
}

/**
 * Elimination in the order laid out, carrying the right-hand side along. No pivoting: every row is dominated by its
 * diagonal. Rows with up to three entries, which are most, have lines of their own.
 */
export function eliminate(net: CompiledNetwork): void {
  if (!net.matrix.symmetric) {
    eliminateAny(net);
    return;
  }
  const { down, size } = net.matrix;
  const { memory: m, regions } = net;
  for (let k = 0, o = 0, x = regions.upper, c = 0; k < size; k++, o += 6) {
    const n = down[c]!;
    const v = 1 / m[o]!;
    const b = m[o + 1]!;
    m[o + 2] = v;
    if (n === 1) {
      const i = down[c + 1]!;
      const s = m[x]! * v;
      m[i] = m[i]! - s * m[x]!;
      m[i + 1] = m[i + 1]! - s * b;
      x += 1;
      c += 2;
    } else if (n === 2) {
      const i = down[c + 1]!;
      const j = down[c + 2]!;
      const u = down[c + 3]!;
      const near = m[x]!;
      const far = m[x + 1]!;
      const s = near * v;
      const t = far * v;
      m[i] = m[i]! - s * near;
      m[i + 1] = m[i + 1]! - s * b;
      m[j] = m[j]! - t * far;
      m[j + 1] = m[j + 1]! - t * b;
      m[u] = m[u]! - s * far;
      x += 2;
      c += 4;
    } else {
      let u = c + 1 + n;
      c++;
      for (const last = x + n; x < last; x++, c++) {
        const i = down[c]!;
        const near = m[x]!;
        const s = near * v;
        m[i] = m[i]! - s * near;
        m[i + 1] = m[i + 1]! - s * b;
        for (let y = x + 1; y < last; y++, u++) {
          const t = down[u]!;
          m[t] = m[t]! - s * m[y]!;
        }
      }
      c = u;
    }
  }
}

function eliminateAny({ memory: m, regions, matrix }: CompiledNetwork): void {
  const { down, size } = matrix;
  const below = regions.lower - regions.upper;
  for (let k = 0, o = 0, x = regions.upper, c = 0; k < size; k++, o += 6) {
    const n = down[c]!;
    const v = 1 / m[o]!;
    const b = m[o + 1]!;
    m[o + 2] = v;
    let u = c + 1 + n;
    c++;
    for (const last = x + n; x < last; x++, c++) {
      const i = down[c]!;
      const near = m[x]!;
      const s = m[x + below]! * v;
      m[i] = m[i]! - s * near;
      m[i + 1] = m[i + 1]! - s * b;
      for (let y = x + 1; y < last; y++, u++) {
        const t = down[u]!;
        m[t] = m[t]! - s * m[y]!;
        m[t + below] = m[t + below]! - m[y + below]! * v * near;
      }
    }
    c = u;
  }
}

/** The unknowns of an eliminated matrix, from the last to the first; added to the pressures. */
export function substitute({ memory: m, regions, matrix }: CompiledNetwork): void {
  const { up, size, entries } = matrix;
  for (let k = size, o = 6 * size - 6, x = regions.upper + entries - 1, c = 0; k > 0; k--, o -= 6) {
    let sum = m[o + 1]!;
    // The change found last comes last, so that nothing has to wait for it.
    for (const last = c + up[c]!; c < last; x--) sum -= m[x]! * m[up[++c]! + 3]!;
    const change = sum * m[o + 2]!;
    m[o + 3] = change;
    m[o + 4] = m[o + 4]! + change;
    c++;
  }
}
