import { demos } from '@kneewall/demos';
import { evaluate, type Job, runJob } from '@kneewall/engine';
import { applyEdit, type Project, valueAt } from '@kneewall/project';
import { atMost, type BenchRow, multiplyAdds, perMillisecond, side } from './measure.ts';

const hatchHeight = ['routes', 'passages', 'hatch', 'height'];

function jobOf(project: Project): Job {
  const job = evaluate(project, {}).wanted.find((j) => j.kind === 'access/passage');
  if (!job) throw new Error('no passage is to be planned');
  return job;
}

function withHatch(project: Project, height: number): Project {
  const after = { value: height, known: 'measured' };
  const edit = { device: 'bench', seq: 1, path: hatchHeight, before: valueAt(project, hatchHeight), after };
  const { value, problems } = applyEdit(project, edit);
  if (problems.length > 0) throw new Error(`the edit was refused: ${problems[0]?.mend}`);
  return value;
}

const run = (job: Job): unknown => runJob(job, { blob: () => undefined, tell: () => {} });

/** Questions: all pieces of all units through all passages within 5 s, and after one opening changed within 500 ms. */
export async function passageBench(): Promise<BenchRow[]> {
  const project = (await demos.find((d) => d.id === 'tern-ledge')?.load()) as Project;
  // Another hatch each time, and another way: nothing kept from the last run stands in for work.
  let turn = 0;
  const jobs = (all: boolean): Job => {
    turn++;
    const hatch = withHatch(project, 0.8 + turn * 1e-5);
    const job = jobOf(hatch);
    if (!all) return job;
    const inputs = job.inputs as { ways: { passage: { framing: number } }[] };
    const ways = inputs.ways.map((w) => ({
      ...w,
      passage: { ...w.passage, framing: w.passage.framing + turn * 1e-6 },
    }));
    return { ...job, inputs: { ways } };
  };
  const whole = side(
    () => void run(jobs(true)),
    () => multiplyAdds(500 * perMillisecond),
  );
  run(jobOf(project));
  const edit = side(
    () => void run(jobs(false)),
    () => multiplyAdds(500 * perMillisecond),
  );
  return [
    atMost('passages: Tern Ledge, all pieces', whole, 10, 'at most 5 s'),
    atMost('passages: the hatch changed', edit, 1, 'at most 500 ms'),
  ];
}
