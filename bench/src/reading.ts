import { demos } from '@kneewall/demos';
import { coldMemo, evaluate, runJob } from '@kneewall/engine';
import { openProject, type Project } from '@kneewall/project';
import { atMost, type BenchRow, multiplyAdds, perMillisecond, side } from './measure.ts';

const goal = 300;

/** Question: do all verdicts, causes and the next reading stand again within 300 ms after a reading is kept? */
export async function readingBench(): Promise<BenchRow[]> {
  const opened = openProject(JSON.stringify(await demos.find((d) => d.id === 'tern-ledge-after')?.load()));
  if (!opened.ok) throw new Error('the demo of the winter after cannot be opened');
  const { project } = opened;
  const memo = coldMemo();
  const { wanted } = evaluate(project, {}, { memo });
  const done = wanted.filter((j) => j.kind === 'commissioning/responses');
  const results = Object.fromEntries(
    done.map((job) => [job.key, runJob(job, { blob: () => undefined, tell: () => {} })]),
  );
  const fitting = ({ visits }: NonNullable<ReturnType<typeof evaluate>['plan']['trades']['commissioning']>): number =>
    Object.values(visits).filter((v) => v.found.ok && v.found.value.suspects.length > 0).length;
  let turn = 0;
  const ours = (): void => {
    turn += 1;
    const { plan } = evaluate(readAgain(project, turn), results, { memo });
    if (!plan.trades.commissioning || fitting(plan.trades.commissioning) === 0) throw new Error('no cause was weighed');
  };
  const times = side(ours, () => multiplyAdds(goal * perMillisecond));
  return [
    atMost(
      'reading: verdicts, causes and the next reading',
      times,
      1,
      'at most the time of 210 million multiply-adds, about 300 ms',
    ),
  ];
}

/** The project with its last reading a little otherwise, as if it had just been kept. */
function readAgain(project: Project, turn: number): Project {
  const [id = '', last] = Object.entries(project.readings ?? {}).at(-1) ?? [];
  const value = typeof last?.value?.value === 'number' ? last.value.value : 0;
  const read = { ...last, value: { value: value * (1 + 1e-3 * (turn % 7)), known: 'measured' as const } };
  return { ...project, readings: { ...project.readings, [id]: read } };
}
