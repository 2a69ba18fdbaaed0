import { compileNetwork, type NetworkLink, solveNetwork } from '@kneewall/engine/physics';
import { LinkProperty, NodeProperty, Project, Workspace } from 'epanet-js';
import { atMost, type BenchRow, side } from './measure.ts';

const branches = 60;
const viscosity = 1.51e-5;

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

/** The same network as the engine's own input text. */
function inputText(): string {
  const junctions = nodes.filter((n) => n !== 'n0').map((n) => `${n} 0 ${demandOf(n) * 1000}`);
  const lines = pipes.map(
    (p) => `${p.id} ${p.from} ${p.to} ${p.length} ${p.diameter * 1000} ${p.roughness * 1000} 0 Open`,
  );
  return [
    '[JUNCTIONS]',
    ...junctions,
    '[RESERVOIRS]',
    'n0 101.97',
    '[PIPES]',
    ...lines,
    '[OPTIONS]',
    'Units LPS',
    'Headloss D-W',
    'Viscosity 14.7759',
    'Accuracy 0.000001',
    'Trials 200',
    '[TIMES]',
    'Duration 0',
    '[END]',
    '',
  ].join('\n');
}

/** Question: is a duct network of 60 branches at least five times faster than in the general pipe-network engine, flows within 0.5 %? */
export async function networkBench(): Promise<BenchRow[]> {
  const net = ours();
  const workspace = new Workspace();
  await workspace.loadModule();
  const project = new Project(workspace);
  workspace.writeFile('net.inp', inputText());
  project.open('net.inp', 'net.rpt', 'net.bin');
  project.openH();
  const solveTheirs = () => {
    project.initH(10);
    project.runH();
  };
  solveTheirs();
  compareFlows(net, project);
  const times = side(
    () => {
      for (let i = 0; i < 10; i++) solveNetwork(net);
    },
    () => {
      for (let i = 0; i < 10; i++) solveTheirs();
    },
  );
  project.closeH();
  project.close();
  return [
    atMost(
      `duct network: ${pipes.length} branches, ${nodes.length} nodes`,
      times,
      0.2,
      'at most 0.2 of the pipe engine',
    ),
  ];
}

function compareFlows(net: ReturnType<typeof ours>, project: Project): void {
  const solution = solveNetwork(net);
  const largest = Math.max(...solution.flows.map(Math.abs));
  if (!solution.converged) throw new Error('the network did not settle');
  net.linkIds.forEach((id, i) => {
    const theirs = project.getLinkValue(project.getLinkIndex(id), LinkProperty.Flow) / 1000;
    const mine = solution.flows[i] ?? 0;
    if (Math.abs(theirs) > 0.1 * largest && Math.abs(mine / theirs - 1) > 0.005)
      throw new Error(`flow in ${id} differs: ${mine} and ${theirs}`);
  });
  if (project.getNodeValue(1, NodeProperty.Head) === 0) throw new Error('the engine gave no heads');
}
