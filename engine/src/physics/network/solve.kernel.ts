import { frictionFactor, frictionGrowth } from '../flow/friction.ts';
import { type CompiledNetwork, DUCT, FAN } from './compile.ts';
import { fanPressure, fanSlope } from './fanCurve.ts';

/** Pressure lost along every link at the flows `q`, and how fast it grows with flow. Outputs in `drop` and `slope`. */
export function linkLaws(net: CompiledNetwork, q: Float64Array, drop: Float64Array, slope: Float64Array): void {
  const { links, kind, a, b, c, d } = net;
  for (let e = 0; e < links; e++) {
    const flow = q[e]!;
    const size = Math.abs(flow);
    if (kind[e] === DUCT) {
      const re = Math.max(a[e]! * size, 1e-9);
      const f = frictionFactor(re, d[e]!);
      const floor = Math.max(size, 1e-9 / a[e]!);
      drop[e] = (b[e]! * f * floor + c[e]! * size) * flow;
      slope[e] = (b[e]! * f * (2 + frictionGrowth(f, re, d[e]!)) + 2 * c[e]!) * floor;
    } else if (kind[e] === FAN) {
      const curve = net.fans[e]!;
      drop[e] = -fanPressure(curve, flow);
      slope[e] = Math.max(-fanSlope(curve, flow), 1e-6);
    } else {
      // Straight near zero flow, so that the slope never vanishes: below 1e-4 Pa.
      const knee = (1e-4 / a[e]!) ** (1 / b[e]!);
      const eased = Math.max(size, knee);
      drop[e] = a[e]! * eased ** (b[e]! - 1) * flow;
      slope[e] = a[e]! * eased ** (b[e]! - 1) * (size > knee ? b[e]! : 1);
    }
  }
}

/**
 * Pressures at the nodes that satisfy the linearised network: conductances 1/slope, flows corrected for what each
 * link's law misses. Fills `p` (all nodes) and `next` (flows). Dense elimination without pivoting: every row is
 * dominated by its diagonal; leaks inside links make it not quite symmetric.
 */
export function linearStep(net: CompiledNetwork, q: Float64Array, p: Float64Array, next: Float64Array): void {
  const { links, row, from, to, held, leave, arrive, unknowns: n } = net;
  const { matrix: m, right: r, drop, slope } = net.scratch;
  m.fill(0);
  r.fill(0);
  for (let v = 0; v < net.nodes; v++) if (row[v]! >= 0) r[row[v]!] = -net.outflow[v]!;
  for (let e = 0; e < links; e++) {
    const g = 1 / slope[e]!;
    const y = q[e]! - g * drop[e]!;
    const i = row[from[e]!]!;
    const j = row[to[e]!]!;
    if (i >= 0) {
      const share = leave[e]!;
      m[i * n + i] = m[i * n + i]! + share * g;
      if (j >= 0) m[i * n + j] = m[i * n + j]! - share * g;
      r[i] = r[i]! - share * (y - (j < 0 ? g * held[to[e]!]! : 0));
    }
    if (j >= 0) {
      const share = arrive[e]!;
      m[j * n + j] = m[j * n + j]! + share * g;
      if (i >= 0) m[j * n + i] = m[j * n + i]! - share * g;
      r[j] = r[j]! + share * (y + (i < 0 ? g * held[from[e]!]! : 0));
    }
  }
  factorAndSolve(m, r, n);
  for (let v = 0; v < net.nodes; v++) p[v] = row[v]! >= 0 ? r[row[v]!]! : held[v]!;
  for (let e = 0; e < links; e++) next[e] = q[e]! + (p[from[e]!]! - p[to[e]!]! - drop[e]!) / slope[e]!;
}

/** Gaussian elimination in place, skipping the zeros of a sparse network; the solution replaces the right-hand side. */
function factorAndSolve(m: Float64Array, r: Float64Array, n: number): void {
  for (let k = 0; k < n; k++) {
    const pivot = m[k * n + k]!;
    for (let i = k + 1; i < n; i++) {
      const factor = m[i * n + k]! / pivot;
      if (factor === 0) continue;
      for (let j = k + 1; j < n; j++) m[i * n + j] = m[i * n + j]! - factor * m[k * n + j]!;
      r[i] = r[i]! - factor * r[k]!;
    }
  }
  for (let k = n - 1; k >= 0; k--) {
    let sum = r[k]!;
    for (let j = k + 1; j < n; j++) sum -= m[k * n + j]! * r[j]!;
    r[k] = sum / m[k * n + k]!;
  }
}

/** Largest miss of any link's law against the pressures at its ends, Pa. */
export function worstMiss(net: CompiledNetwork, p: Float64Array, drop: Float64Array): number {
  let worst = 0;
  for (let e = 0; e < net.links; e++) {
    const miss = Math.abs(p[net.from[e]!]! - p[net.to[e]!]! - drop[e]!);
    if (miss > worst) worst = miss;
  }
  return worst;
}

/** Largest imbalance of flow at any free node, m³/s. */
export function worstImbalance(net: CompiledNetwork, q: Float64Array, at: Float64Array): number {
  at.fill(0);
  for (let v = 0; v < net.nodes; v++) if (net.row[v]! >= 0) at[net.row[v]!] = -net.outflow[v]!;
  for (let e = 0; e < net.links; e++) {
    const i = net.row[net.from[e]!]!;
    const j = net.row[net.to[e]!]!;
    if (i >= 0) at[i] = at[i]! - net.leave[e]! * q[e]!;
    if (j >= 0) at[j] = at[j]! + net.arrive[e]! * q[e]!;
  }
  let worst = 0;
  for (let k = 0; k < net.unknowns; k++) worst = Math.max(worst, Math.abs(at[k]!));
  return worst;
}
