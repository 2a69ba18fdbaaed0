// Source: looped networks solved by epanet-js 0.9.0 and by a dense Newton solve (computed). See README.md and the files.
import { compileNetwork, type NetworkSpec, solveNetwork } from '@kneewall/engine/physics';
import { type Row, row, type ValidationSource } from '../src/row.ts';
import grid from './grid_air_15.json' with { type: 'json' };
import air from './loop_air_12.json' with { type: 'json' };
import water from './loop_water_8.json' with { type: 'json' };

const id = 'networks';
const gravity = 9.80665;

type Pipe = {
  id: string;
  from: string;
  to: string;
  length_m: number;
  diameter_mm: number;
  roughness_mm: number;
  K?: number;
};
type Node = { id: string; type: string; head_m?: number; demand_Lps?: number };
export type NetworkFile = {
  name: string;
  kinematic_viscosity_m2s: number;
  nodes: Node[];
  pipes: Pipe[];
  results?: { colebrook?: { flows_Lps: Record<string, number> }; engine?: { flows_Lps: Record<string, number> } };
};

/** Heads become pressures of a fluid of density 1, so that one network serves water and air. */
export function specOf(file: NetworkFile): NetworkSpec {
  const nodes = file.nodes.map((n) => ({
    id: n.id,
    ...(n.head_m === undefined ? { outflow: (n.demand_Lps ?? 0) / 1000 } : { pressure: n.head_m * gravity }),
  }));
  const links = file.pipes.map((p) => {
    const diameter = p.diameter_mm / 1000;
    const area = (Math.PI * diameter ** 2) / 4;
    return {
      id: p.id,
      from: p.from,
      to: p.to,
      kind: 'duct' as const,
      length: p.length_m,
      diameter,
      area,
      roughness: p.roughness_mm / 1000,
      loss: p.K ?? 0,
      density: 1,
      viscosity: file.kinematic_viscosity_m2s,
    };
  });
  return { nodes, links };
}

function measureNetwork(file: NetworkFile): Row[] {
  const net = compileNetwork(specOf(file));
  const solution = solveNetwork(net);
  const largest = Math.max(...solution.flows.map(Math.abs)) * 1000;
  const balance = row(
    {
      source: id,
      case: file.name,
      field: 'mass balance',
      unit: 'of the largest flow',
      expected: 0,
      tolerance: 1e-9,
      known: 'computed',
    },
    solution.converged ? solution.imbalance : Number.NaN,
  );
  const flows = net.linkIds.flatMap((pipe, i) => {
    const ours = (solution.flows[i] ?? 0) * 1000;
    const exact = file.results?.colebrook?.flows_Lps[pipe];
    const engine = file.results?.engine?.flows_Lps[pipe];
    return [
      ...(exact === undefined
        ? []
        : [
            row(
              {
                source: id,
                case: `${file.name}, ${pipe}`,
                field: 'flow',
                unit: 'L/s',
                expected: exact,
                tolerance: 1e-6 * Math.abs(exact),
                known: 'computed',
              },
              ours,
            ),
          ]),
      // The engine's rule and ours part by up to 1.8 % where a duct is nearly idle: those are left to the exact solve.
      ...(engine === undefined || Math.abs(engine) < 0.1 * largest
        ? []
        : [
            row(
              {
                source: id,
                case: `${file.name}, ${pipe}, pipe engine`,
                field: 'flow',
                unit: 'L/s',
                expected: engine,
                tolerance: 0.005 * Math.abs(engine),
                known: 'computed',
              },
              ours,
            ),
          ]),
    ];
  });
  return [balance, ...flows];
}

export const source: ValidationSource = {
  id,
  title: 'Flow in looped networks',
  measure: () => [water, air, grid].flatMap((f) => measureNetwork(f as unknown as NetworkFile)),
  measureCase: (file) => measureNetwork(file as NetworkFile),
};
