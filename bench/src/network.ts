import { compileNetwork, type NetworkLink, type NetworkSolution, solveNetwork } from '@kneewall/engine/physics';
import { AnalysisStatistic, InitHydOption, LinkProperty, NodeProperty, Project, Workspace } from 'epanet-js';
import { atMost, type BenchRow, side } from './measure.ts';

const branches = 60;
const viscosity = 1.51e-5;
/** Of the largest pressure drop: the miss of any branch's law at which both sides stop. */
const missWanted = 1e-6;
/** m/s²: the engine's own 32.2 ft/s², by which its heads become pressures. */
const gravity = 9.81456;

/** A trunk of 15 pieces with branches that meet in 45 nodes, loops among them; made by arithmetic, invented. */
const pipes = Array.from({ length: branches }, (_, i) => {
  const from = i < 45 ? `n${Math.floor(i * 0.6)}` : `n${i - 44}`;
  const to = i < 45 ? `n${i + 1}` : `n${46 - (i - 44)}`;
  return { id: `d${i}`, from, to, length: 3 + (i % 5), diameter: 0.35 - 0.004 * i, roughness: 0.00009 };
}).filter((p) => p.from !== p.to);
const nodes = [...new Set(pipes.flatMap((p) => [p.from, p.to]))];
const demandOf = (n: string): number => (n === 'n0' ? 0 : 0.004 + 0.0005 * (Number(n.slice(1)) % 5));

function ours() {
  const links: NetworkLink[] = pipes.map((p) => ({
    ...p,
    kind: 'duct',
    area: (Math.PI * p.diameter ** 2) / 4,
    density: 1,
    viscosity,
  }));
  return compileNetwork({
    nodes: nodes.map((id) => (id === 'n0' ? { id, pressure: 1000 } : { id, outflow: demandOf(id) })),
    links,
  });
}

/** The same network as the engine's own input text, to be solved until no branch misses its law by more than `headError` m. */
function inputText(headError: number): string {
  const junctions = nodes.filter((n) => n !== 'n0').map((n) => `${n} 0 ${demandOf(n) * 1000}`);
  const lines = pipes.map(
    (p) => `${p.id} ${p.from} ${p.to} ${p.length} ${p.diameter * 1000} ${p.roughness * 1000} 0 Open`,
  );
  return [
    '[JUNCTIONS]',
    ...junctions,
    '[RESERVOIRS]',
    `n0 ${1000 / gravity}`,
    '[PIPES]',
    ...lines,
    '[OPTIONS]',
    'Units LPS',
    'Headloss D-W',
    'Viscosity 14.7759',
    'Accuracy 0.001',
    `Headerror ${headError.toFixed(12)}`,
    'Trials 200',
    '[TIMES]',
    'Duration 0',
    '[END]',
    '',
  ].join('\n');
}

/**
 * Question: is a duct network of 60 branches at least five times faster than in the general pipe-network engine, flows
 * within 0.5 %? Both begin without flows and stop at the same miss of the laws. Ours solves Colebrook, the engine the
 * explicit rule of Swamee and Jain.
 */
export async function networkBench(): Promise<BenchRow[]> {
  const net = ours();
  const solveOurs = () => solveNetwork(net, undefined, missWanted);
  const { pressures } = solveOurs();
  const at = (id: string): number => pressures[net.nodeIds.indexOf(id)] ?? Number.NaN;
  const largest = Math.max(...pipes.map((p) => Math.abs(at(p.from) - at(p.to))));
  const workspace = new Workspace();
  await workspace.loadModule();
  const project = new Project(workspace);
  const headError = (missWanted * largest) / gravity;
  workspace.writeFile('net.inp', inputText(headError));
  project.open('net.inp', 'net.rpt', 'net.bin');
  project.openH();
  const solveTheirs = () => {
    project.initH(InitHydOption.InitFlow);
    project.runH();
  };
  solveTheirs();
  compare(solveOurs(), net.linkIds, missWanted * largest, project);
  const times = side(
    () => {
      for (let i = 0; i < 200; i++) solveOurs();
    },
    () => {
      for (let i = 0; i < 200; i++) solveTheirs();
    },
  );
  project.closeH();
  project.close();
  return [
    atMost(
      `duct network: ${pipes.length} branches, ${nodes.length} nodes, 200 times`,
      times,
      0.2,
      'at most 0.2 of the pipe engine',
    ),
  ];
}

/** Both sides have met the laws as well as they were asked to, and agree where flow is not all but idle. */
function compare(solution: NetworkSolution, ids: readonly string[], miss: number, project: Project): void {
  const largest = Math.max(...solution.flows.map(Math.abs));
  if (!solution.converged || solution.miss > miss) throw new Error('the network did not settle');
  const theirMiss = project.getStatistic(AnalysisStatistic.MaxHeadError) * gravity;
  if (!(theirMiss <= miss)) throw new Error(`the engine misses by ${theirMiss} Pa, ours by ${solution.miss} Pa`);
  ids.forEach((id, i) => {
    const theirs = project.getLinkValue(project.getLinkIndex(id), LinkProperty.Flow) / 1000;
    const mine = solution.flows[i] ?? 0;
    if (Math.abs(theirs) > 0.1 * largest && Math.abs(mine / theirs - 1) > 0.005)
      throw new Error(`flow in ${id} differs: ${mine} and ${theirs}`);
  });
  if (project.getNodeValue(1, NodeProperty.Head) === 0) throw new Error('the engine gave no heads');
}
