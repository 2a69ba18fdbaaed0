import type { NetworkFile } from './readNetwork.ts';

const gravity = 9.80665;

/**
 * Largest misses of flows and pressures against the network itself, by arithmetic of its own: of air at any junction
 * (share of the largest flow) and of the pressure law of any pipe (share of the largest drop), with Darcy, 64/Re below
 * 2300 and above it Colebrook and White solved by halving.
 */
export function missesOf(file: NetworkFile, flows: Record<string, number>, pressures: Record<string, number>) {
  const out: Record<string, number> = Object.fromEntries(file.nodes.map((n) => [n.id, n.demand_Lps / 1000]));
  let [law, drop, flow] = [0, 0, 0];
  for (const p of file.pipes) {
    const q = flows[p.id] ?? Number.NaN;
    out[p.from] = (out[p.from] ?? 0) + q;
    out[p.to] = (out[p.to] ?? 0) - q;
    const across = (pressures[p.from] ?? Number.NaN) - (pressures[p.to] ?? Number.NaN);
    law = largest(law, across - lossOf(p, q, file.viscosity));
    drop = largest(drop, across);
    flow = largest(flow, q);
  }
  const miss = file.nodes.reduce((m, n) => (n.head_m === undefined ? largest(m, out[n.id] ?? Number.NaN) : m), 0);
  return { air: miss / Math.max(flow, 1e-12), law: law / Math.max(drop, 1e-12) };
}

/** Keeps what is not a number, so that it shows. */
const largest = (most: number, x: number): number => Math.max(most, Math.abs(x));

/** Pa of a fluid of density 1. */
function lossOf(p: NetworkFile['pipes'][number], q: number, viscosity: number): number {
  const d = p.diameter_mm / 1000;
  const v = q / ((Math.PI * d * d) / 4);
  const re = (Math.abs(v) * d) / viscosity;
  const friction = re < 2300 ? (64 * viscosity * v) / d : colebrook(re, p.roughness_mm / 1000 / d) * v * Math.abs(v);
  return ((friction * p.length_m) / d + p.K * v * Math.abs(v)) / 2;
}

function colebrook(re: number, roughness: number): number {
  let [low, high] = [0.1, 100];
  for (let i = 0; i < 80; i++) {
    const x = (low + high) / 2;
    if (x + 2 * Math.log10(roughness / 3.7 + (2.51 * x) / re) > 0) high = x;
    else low = x;
  }
  return 1 / low ** 2;
}

export const headOf = (pressure: number): number => pressure / gravity;
export const pressureOf = (head: number): number => head * gravity;
