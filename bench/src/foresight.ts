import { demos } from '@kneewall/demos';
import { evaluate, highsSolver, type Job, runJob } from '@kneewall/engine';
import type { LinearSolver } from '@kneewall/engine/physics';
import type { Project } from '@kneewall/project';
import loadHighs from 'highs';
import { atMost, type BenchRow, multiplyAdds, perMillisecond } from './measure.ts';

async function foresightJob(): Promise<Job> {
  const project = (await demos.find((d) => d.id === 'tern-ledge')?.load()) as Project;
  const job = evaluate(project, {}).wanted.find((j) => j.kind === 'coupling/foresight');
  if (!job) throw new Error('the demo is on its own power');
  return job;
}

/** Milliseconds of the reference: 20 s of multiply-adds, a tenth of them run. */
function referenceTime(): number {
  const start = performance.now();
  multiplyAdds(2000 * perMillisecond);
  return 10 * (performance.now() - start);
}

/**
 * Question: is a year of hours with everything known beforehand, the house's heat moved as well, solved in 20 s? Once,
 * between two references: it takes too long to be run again and again. Only solving is counted.
 */
export async function foresightBench(): Promise<BenchRow[]> {
  const job = await foresightJob();
  const solve = highsSolver(await loadHighs());
  let longest = 0;
  const timed: LinearSolver = (programme, tell) => {
    const start = performance.now();
    const solved = solve(programme, tell);
    longest = Math.max(longest, performance.now() - start);
    return solved;
  };
  const before = referenceTime();
  const found = runJob(job, { blob: () => undefined, tell: () => {}, solver: timed }) as { readonly ok: boolean };
  if (!found.ok) throw new Error('the year is not found or not proved');
  const times = { ours: longest, reference: (before + referenceTime()) / 2 };
  return [
    atMost(
      'foresight: a year of hours, heat moved as well',
      times,
      1,
      'at most the time of 14 billion multiply-adds, about 20 s',
    ),
  ];
}
