import { compileNetwork } from './compile.ts';
import { compileFan, fanPressure, fanSlope, operatingPoints } from './fanCurve.ts';
import { networkProblems, stops } from './problems.ts';
import { solveNetwork } from './solve.ts';
import type { NetworkSpec } from './spec.ts';

/** Where a fan can run, m³/s and Pa. `steady`: a little more flow finds less pressure than it needs, so it falls back. */
export type FanPoint = { readonly flow: number; readonly pressure: number; readonly steady: boolean };

/**
 * Every operating point of one fan in a network of otherwise monotone elements, by rising flow from 0 to the end of
 * its table: the fan is taken out, its flow forced through the rest, and the pressure that takes held against the
 * curve at `scans` flows. None where the network has no solution, its table is out of order or no fan has that name.
 */
export function fanPoints(spec: NetworkSpec, fan: string, scans = 400): FanPoint[] {
  const link = spec.links.find((l) => l.id === fan);
  if (link?.kind !== 'fan' || networkProblems(spec).some(stops)) return [];
  const { leave = 1, arrive = 1, from, to } = link;
  const links = spec.links.filter((l) => l !== link);
  let solved = true;
  const system = (flow: number): number => {
    const nodes = spec.nodes.map((n) => {
      const more = (n.id === from ? leave * flow : 0) - (n.id === to ? arrive * flow : 0);
      return n.pressure === undefined && more !== 0 ? { ...n, outflow: (n.outflow ?? 0) + more } : n;
    });
    const net = compileNetwork({ nodes, links });
    const { converged, pressures } = solveNetwork(net);
    solved &&= converged;
    const at = (id: string): number => pressures[net.nodeIds.indexOf(id)] ?? 0;
    return at(to) - at(from);
  };
  const curve = compileFan(link.points);
  const near = (link.points.at(-1)?.flow ?? 0) * 1e-6;
  const found = operatingPoints(curve, system, scans).map((flow) => ({
    flow,
    pressure: fanPressure(curve, flow),
    steady: fanSlope(curve, flow) < (system(flow + near) - system(flow - near)) / (2 * near),
  }));
  return solved ? found : [];
}
