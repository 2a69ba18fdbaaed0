import type { CompiledNetwork } from './compile.ts';

/** Flow in every link and pressure at every node out of a solution, in the network's own order. */
export function follow(net: CompiledNetwork, pressures: Float64Array, flows: Float64Array): void {
  const { place, passage, numbers: n } = net.laws;
  const { numbers: r } = net.passages;
  const { row, follow: chain, followSign } = net.whole;
  for (let i = 0; i < place.length; i++) {
    const e = place[i]!;
    flows[i] = n[e * 19]! * r[passage[e]! * 6]! + n[e * 19 + 1]!;
  }
  for (let v = 0; v < row.length; v++) if (row[v]! >= 0) pressures[v] = net.matrix.nodes[row[v]! * 6 + 4]!;
  for (let f = 0, o = 0; f < followSign.length; f++, o += 3)
    pressures[chain[o]!] = pressures[chain[o + 1]!]! - followSign[f]! * n[chain[o + 2]! * 19 + 3]!;
}

/** Largest imbalance of flow at a free node as a share of the largest flow. */
export function balance(net: CompiledNetwork, flows: Float64Array): number {
  const { from, to, leave, arrive, outflow, free, sum } = net.whole;
  let largest = 1e-12;
  for (let v = 0; v < sum.length; v++) sum[v] = -outflow[v]!;
  for (let e = 0; e < flows.length; e++) {
    const q = flows[e]!;
    const i = from[e]!;
    const j = to[e]!;
    sum[i] = sum[i]! - leave[e]! * q;
    sum[j] = sum[j]! + arrive[e]! * q;
    largest = Math.max(largest, Math.abs(q));
  }
  let worst = 0;
  for (let v = 0; v < sum.length; v++) {
    const miss = Math.abs(free[v] === 1 ? sum[v]! : 0);
    if (!(miss <= worst)) worst = miss;
  }
  return worst / largest;
}
