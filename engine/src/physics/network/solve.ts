import type { CompiledNetwork } from './compile.ts';
import { linearStep, linkLaws, worstImbalance, worstMiss } from './solve.kernel.ts';

export type NetworkSolution = {
  readonly converged: boolean;
  readonly iterations: number;
  /** Largest miss of a link's law, Pa, and largest imbalance at a node as a share of the largest flow. */
  readonly miss: number;
  readonly imbalance: number;
  /** By node, Pa; by link, m³/s. */
  readonly pressures: Float64Array;
  readonly flows: Float64Array;
};

const iterationsMost = 100;
/** Of the largest pressure drop at work. */
const missWanted = 1e-12;

/**
 * Newton on flows and pressures together, full steps, shortened only when the worst miss grows. Networks of monotone
 * elements have one solution and reach it from any start; a curve with a hump may have more (see `operatingPoints`).
 * Every free node must be joined to a held one. Never throws; capped at 100 iterations.
 */
export function solveNetwork(net: CompiledNetwork, start?: Float64Array): NetworkSolution {
  const { drop, slope, trial, right } = net.scratch;
  const q = start ? Float64Array.from(start) : firstFlows(net);
  const p = new Float64Array(net.nodes);
  const next = new Float64Array(net.links);
  let miss = Number.POSITIVE_INFINITY;
  let iterations = 0;
  linkLaws(net, q, drop, slope);
  while (iterations < iterationsMost) {
    iterations++;
    linearStep(net, q, p, next);
    let share = 1;
    let reached = Number.POSITIVE_INFINITY;
    for (let tries = 0; tries < 8; tries++, share /= 2) {
      for (let e = 0; e < net.links; e++) trial[e] = (q[e] ?? 0) + share * ((next[e] ?? 0) - (q[e] ?? 0));
      linkLaws(net, trial, drop, slope);
      reached = worstMiss(net, p, drop);
      if (reached <= miss || iterations < 3) break;
    }
    q.set(trial);
    miss = reached;
    if (miss <= missWanted * scaleOf(drop)) break;
  }
  const imbalance = worstImbalance(net, q, right) / Math.max(1e-12, largest(q));
  return {
    converged: miss <= 1e-9 * scaleOf(drop) && imbalance <= 1e-9,
    iterations,
    miss,
    imbalance,
    pressures: p,
    flows: q,
  };
}

/** About what a duct of its size carries at 3 m/s, so that the first step starts from turbulent flow. */
function firstFlows(net: CompiledNetwork): Float64Array {
  const q = new Float64Array(net.links);
  for (let e = 0; e < net.links; e++) {
    const reynolds = net.a[e] ?? 0;
    const curve = net.fans[e];
    if (curve) q[e] = curve.flows[curve.flows.length >> 1] ?? 0.1;
    else q[e] = net.kind[e] === 0 && reynolds > 0 ? 30_000 / reynolds : 0.02;
  }
  return q;
}

const largest = (x: Float64Array): number => x.reduce((most, v) => Math.max(most, Math.abs(v)), 0);
const scaleOf = (drop: Float64Array): number => Math.max(1e-9, largest(drop));
