import { demos } from '@kneewall/demos';
import { evaluate, powerReady, replayedHours, splitOf, winterMaker, wintersKind } from '@kneewall/engine';
import type { Project } from '@kneewall/project';
import { atMost, type BenchRow, multiplyAdds, perMillisecond, side } from './measure.ts';

type Inputs = { readonly winters: Parameters<typeof winterMaker>[0] };
type PowerInputs = Parameters<typeof powerReady>[0];

/**
 * Question: are 400 sizes of arrays and battery taken through twenty winters of recorded demand in 3 s on one core? One
 * of them is timed, a whole year of hours.
 */
function replays(inputs: PowerInputs): BenchRow {
  const recorded = powerReady({ ...inputs, step: 3600 }).run('unlimited', () => {});
  const times = side(
    () => {
      if (replayedHours(inputs.power, recorded).length !== 400) throw new Error('sizes are missing');
    },
    () => multiplyAdds((3000 / 20) * perMillisecond),
  );
  return atMost(
    'winters: 400 sizes replayed through one of twenty',
    times,
    1,
    'at most the time of 105 million multiply-adds, about 150 ms',
  );
}

/** Questions: are twenty winters made, and run with house, unit and power, each in 4 s on one core? Two of them are timed, since winters share what hangs on the place. */
export async function wintersBench(): Promise<BenchRow[]> {
  const demo = demos.find((d) => d.id === 'tern-ledge');
  const { wanted } = evaluate((await demo?.load()) as Project, {});
  const job = wanted.find((j) => j.kind === wintersKind);
  const power = wanted.find((j) => j.kind === 'coupling/power-year');
  const split = job && splitOf(job);
  if (!job || !split || !power) throw new Error('the demo has no winters to run');
  const maker = winterMaker((job.inputs as Inputs).winters);
  const bare = (): void => multiplyAdds((4000 / 20) * perMillisecond);
  const make = (): void => {
    if (!maker.year(0).dryBulb.every(Number.isFinite)) throw new Error('a winter has no temperature');
  };
  const through = (): void => {
    if (!(split.rows(0, 2, () => {}).length === 2)) throw new Error('a winter was not run');
  };
  const goal = 'at most the time of 140 million multiply-adds, about 200 ms';
  return [
    replays(power.inputs as PowerInputs),
    atMost('winters: one of twenty made', side(make, bare), 1, goal),
    atMost(
      'winters: two of twenty run three times, with 400 sizes',
      side(through, () => multiplyAdds(2 * (4000 / 20) * perMillisecond)),
      1,
      'at most the time of 280 million multiply-adds, about 400 ms',
    ),
  ];
}
