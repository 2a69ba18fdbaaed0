import type { CompiledNetwork } from './compiled.ts';

/** Flow in every link out of a solution, m³/s. Gives the largest imbalance at a free node, a share of the largest flow. */
export function flowsOf({ memory: m, whole }: CompiledNetwork, flows: Float64Array): number {
  const { ends, shares, outflow, free, sum } = whole;
  let largest = 1e-12;
  for (let v = 0; v < sum.length; v++) sum[v] = -outflow[v]!;
  for (let e = 0, c = 0, s = 0; e < flows.length; e++, c += 4, s += 2) {
    const o = ends[c + 2]!;
    const q = m[o]! * m[ends[c + 3]!]! + m[o + 1]!;
    const i = ends[c]!;
    const j = ends[c + 1]!;
    flows[e] = q;
    sum[i] = sum[i]! - shares[s]! * q;
    sum[j] = sum[j]! + shares[s + 1]! * q;
    if (Math.abs(q) > largest) largest = Math.abs(q);
  }
  let worst = 0;
  for (let f = 0; f < free.length; f++) {
    const off = Math.abs(sum[free[f]!]!);
    // Written so that what is not a number counts as an imbalance.
    if (!(off <= worst)) worst = off;
  }
  return worst / largest;
}

/** Pressure at every node out of a solution, Pa. */
export function pressuresOf({ memory: m, whole }: CompiledNetwork, pressures: Float64Array): void {
  const { row, follow, followSign } = whole;
  for (let v = 0; v < row.length; v++) if (row[v]! >= 0) pressures[v] = m[row[v]! + 4]!;
  for (let f = 0, c = 0; f < followSign.length; f++, c += 3)
    pressures[follow[c]!] = pressures[follow[c + 1]!]! - followSign[f]! * m[follow[c + 2]! + 3]!;
}
