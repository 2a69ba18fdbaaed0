import { dischargeCoefficient } from '../../physics/flow/index.ts';
import { compileNetwork, type NetworkLink, type NetworkNode, solveNetwork } from '../../physics/network/index.ts';

type Leak = { readonly coefficient: number; readonly exponent: number };

/** A room behind a shut door. m³/s blown in less what its grilles take, opening to the rest of the house m², leaks outside. */
export type ShutRoom = { readonly id: string; readonly net: number; readonly opening: number; readonly leak: Leak };

export type HousePressure = { readonly pressure: number; readonly converged: boolean; readonly residual: number };

/**
 * Pressure of the open part of a house against outdoors, Pa, with every door shut that gets shut and the blower running:
 * rooms push their air out through their own leaks, and what does not come back under the doors is drawn in through the
 * leaks of the open part. `net` m³/s blown into the open part less what is taken from it; density kg/m³. A house without
 * any leak has no answer and does not converge. Source: `air.house-pressure`.
 */
export function housePressure(
  open: { readonly net: number; readonly leak: Leak },
  rooms: readonly ShutRoom[],
  density: number,
): HousePressure {
  const joined = rooms.filter((r) => r.opening > 0 || r.leak.coefficient > 0);
  const nodes: NetworkNode[] = [
    { id: 'outdoors', pressure: 0 },
    { id: 'open', outflow: -open.net },
    ...joined.map((r) => ({ id: `room ${r.id}`, outflow: -r.net })),
  ];
  const links = [
    ...leakLink('open', open.leak),
    ...joined.flatMap((r) => [...leakLink(`room ${r.id}`, r.leak), ...doorLink(r, density)]),
  ];
  if (open.leak.coefficient <= 0) return { pressure: 0, converged: false, residual: 1 };
  const net = compileNetwork({ nodes, links });
  const solution = solveNetwork(net);
  return {
    pressure: solution.pressures[net.nodeIds.indexOf('open')] ?? 0,
    converged: solution.converged,
    residual: solution.imbalance,
  };
}

/** Q = c pⁿ turned round: pressure = (Q / c)^(1/n). */
const leakLink = (from: string, { coefficient, exponent }: Leak): NetworkLink[] =>
  coefficient > 0
    ? [
        {
          id: `leak ${from}`,
          kind: 'power',
          from,
          to: 'outdoors',
          coefficient: coefficient ** (-1 / exponent),
          exponent: 1 / exponent,
        },
      ]
    : [];

const doorLink = ({ id, opening }: ShutRoom, density: number): NetworkLink[] =>
  opening > 0
    ? [
        {
          id: `door ${id}`,
          kind: 'power',
          from: `room ${id}`,
          to: 'open',
          coefficient: density / 2 / (dischargeCoefficient * opening) ** 2,
          exponent: 2,
        },
      ]
    : [];
