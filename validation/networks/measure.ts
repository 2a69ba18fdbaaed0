// Source: looped networks solved by epanet-js 0.9.0 and by a dense Newton solve (computed). See README.md and the files.
import { compileNetwork, type NetworkSpec, solveNetwork } from '@kneewall/engine/physics';
import { type Row, row, type Truth, type ValidationSource } from '../src/row.ts';
import { headOf, missesOf, pressureOf } from './certificate.ts';
import grid from './grid_air_15.json' with { type: 'json' };
import air from './loop_air_12.json' with { type: 'json' };
import water from './loop_water_8.json' with { type: 'json' };
import { type NetworkFile, readNetwork } from './readNetwork.ts';

const id = 'networks';

/**
 * Heads become pressures of a fluid of density 1, so that one network serves water and air. The files know no flow
 * between laminar and turbulent: Colebrook begins at Re 2300.
 */
function specOf(file: NetworkFile): NetworkSpec {
  const nodes = file.nodes.map((n) => ({
    id: n.id,
    ...(n.head_m === undefined ? { outflow: n.demand_Lps / 1000 } : { pressure: pressureOf(n.head_m) }),
  }));
  const links = file.pipes.map((p) => {
    const diameter = p.diameter_mm / 1000;
    return {
      id: p.id,
      from: p.from,
      to: p.to,
      kind: 'duct' as const,
      length: p.length_m,
      diameter,
      area: (Math.PI * diameter ** 2) / 4,
      roughness: p.roughness_mm / 1000,
      loss: p.K,
      density: 1,
      viscosity: file.viscosity,
      turbulentFrom: 2300,
    };
  });
  return { nodes, links };
}

function measureNetwork(given: unknown): Row[] {
  const file = readNetwork(given);
  const net = compileNetwork(specOf(file));
  if (net.broken)
    throw new Error(net.problems.map((p) => `${p.at} ${p.id}: ${p.code} ${p.field ?? ''}`.trim()).join('; '));
  const solution = solveNetwork(net);
  if (!solution.converged)
    throw new Error(`did not settle: after ${solution.iterations} steps the laws still miss by ${solution.miss} Pa`);
  const flows = byName(net.linkIds, solution.flows);
  const pressures = byName(net.nodeIds, solution.pressures);
  const misses = missesOf(file, flows, pressures);
  const check = (name: string, field: string, unit: string, expected: number, tolerance: number, ours: number): Row => {
    const truth: Truth = { source: id, case: name, field, unit, expected, tolerance, known: 'computed' };
    return row(truth, ours);
  };
  const largest = Math.max(...Object.values(flows).map(Math.abs)) * 1000;
  return [
    check(file.name, 'mass balance', 'of the largest flow', 0, 1e-9, misses.air),
    check(file.name, 'pressure laws', 'of the largest drop', 0, 1e-9, misses.law),
    ...file.pipes.flatMap((p) => {
      const ours = (flows[p.id] ?? Number.NaN) * 1000;
      const exact = file.colebrook.flows_Lps?.[p.id];
      const engine = file.engine.flows_Lps?.[p.id];
      const name = `${file.name}, ${p.id}`;
      return [
        ...(exact === undefined ? [] : [check(name, 'flow', 'L/s', exact, 1e-6 * Math.abs(exact), ours)]),
        // The engine's rule and ours part by up to 1.8 % where a duct is nearly idle: those are left to the exact solve.
        ...(engine === undefined || Math.abs(engine) < 0.1 * largest
          ? []
          : [check(`${name}, pipe engine`, 'flow', 'L/s', engine, 0.005 * Math.abs(engine), ours)]),
      ];
    }),
    ...file.nodes.flatMap((n) => {
      const exact = file.colebrook.heads_m?.[n.id];
      const ours = headOf(pressures[n.id] ?? Number.NaN);
      return exact === undefined
        ? []
        : [check(`${file.name}, ${n.id}`, 'head', 'm', exact, 1e-6 * Math.max(1, Math.abs(exact)), ours)];
    }),
  ];
}

const byName = (names: readonly string[], values: Float64Array): Record<string, number> =>
  Object.fromEntries(names.map((name, i) => [name, values[i] ?? Number.NaN]));

export const source: ValidationSource = {
  id,
  title: 'Flow in looped networks',
  measure: () => [water, air, grid].flatMap(measureNetwork),
  measureCase: (file) => measureNetwork(file),
};
