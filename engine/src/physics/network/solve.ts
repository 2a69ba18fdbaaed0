import type { CompiledNetwork } from './compiled.ts';
import { look } from './look.kernel.ts';
import { NODE, node } from './memory.ts';
import { begin, iterate, step, takeFlows } from './solve.kernel.ts';
import { flowsOf, pressuresOf } from './whole.kernel.ts';

export type NetworkSolution = {
  readonly converged: boolean;
  readonly iterations: number;
  /** Largest miss of a passage's law, Pa, and largest imbalance at a node as a share of the largest flow. */
  readonly miss: number;
  readonly imbalance: number;
  /** By node, Pa; by link, m³/s. */
  readonly pressures: Float64Array;
  readonly flows: Float64Array;
};

const iterationsMost = 100;
/** Of the largest pressure drop at work: what is sought, and what still counts as an answer. */
const missWanted = 1e-12;
const missAllowed = 1e-9;
/** Pa; below it pressure drops are as good as none. */
const missLeast = 1e-13;

/**
 * Flows and pressures of a network, m³/s and Pa. Networks of monotone elements have one solution and reach it from
 * any start (flows by link; without, a straight network is solved first); a fan curve with a hump may have more, see
 * `fanPoints`. `wanted` is the miss to reach as a share of the largest drop. Never throws, never gives NaN; capped at
 * 100 iterations; a network with a problem that stops it is not converged and still.
 */
export function solveNetwork(net: CompiledNetwork, start?: Float64Array, wanted = missWanted): NetworkSolution {
  const { pressures, flows } = room(net.nodeIds.length, net.linkIds.length);
  if (net.broken) return { ...unsolved, pressures, flows };
  begin(net);
  if (start === undefined) step(net);
  else takeFlows(net, start);
  look(net);
  const least = Math.max(missLeast, 4e-16 * heldMost(net));
  const iterations = iterate(net, wanted, least, iterationsMost);
  const [miss = Number.POSITIVE_INFINITY, largest = 0] = net.report;
  pressuresOf(net, pressures);
  const imbalance = flowsOf(net, flows);
  const allowed = Math.max(least, Math.max(wanted, missAllowed) * largest);
  if (Number.isFinite(miss) && Number.isFinite(imbalance))
    return { converged: miss <= allowed && imbalance <= 1e-9, iterations, miss, imbalance, pressures, flows };
  // Sizes so far from any duct's that the arithmetic ran over: nothing of it is passed on.
  return { ...unsolved, iterations, pressures: pressures.fill(0), flows: flows.fill(0) };
}

/** Largest held pressure, Pa: differences are known to its last digits only. Held nodes lie behind the unknown ones. */
function heldMost({ memory, matrix, regions }: CompiledNetwork): number {
  let most = 0;
  for (let o = NODE * matrix.size; o < regions.upper; o += NODE)
    most = Math.max(most, Math.abs(memory[o + node.pressure] ?? 0));
  return most;
}

const unsolved = { converged: false, iterations: 0, miss: Number.POSITIVE_INFINITY, imbalance: 1 } as const;

/** Pressures and flows side by side in one buffer: making two would take as long as half the solution. */
function room(nodes: number, links: number): Pick<NetworkSolution, 'pressures' | 'flows'> {
  const buffer = new ArrayBuffer(8 * (nodes + links));
  return { pressures: new Float64Array(buffer, 0, nodes), flows: new Float64Array(buffer, 8 * nodes, links) };
}
