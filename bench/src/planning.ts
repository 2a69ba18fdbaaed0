import {
  layWork,
  lowerBounds,
  planWork,
  type SolvedPlan,
  solvePlan,
  startTable,
  type WorkLayout,
  type WorkSpec,
} from '@kneewall/engine/physics';
import { atMost, type BenchRow, multiplyAdds, perMillisecond } from './measure.ts';

/** Whole numbers below `count`, always the same ones. */
function draws(seed: number): (count: number) => number {
  let x = seed;
  return (count) => {
    x = (Math.imul(x, 1103515245) + 12345) & 0x7fffffff;
    return (x >> 8) % count;
  };
}

/** 60 tasks of 1 to 10 periods on four resources, each after up to three before it: invented, of the published kind. */
function sixtyTasks(seed: number): WorkLayout {
  const draw = draws(seed);
  const horizon = 400;
  const open = new Uint8Array(horizon + 1).fill(60);
  const pieces = Array.from({ length: 60 }, (_, i) => {
    const length = 1 + draw(10);
    const before = new Set(i < 4 ? [] : Array.from({ length: 1 + draw(3) }, () => Math.max(0, i - 1 - draw(12))));
    return {
      length,
      table: startTable(open, length, horizon),
      needs: Array.from({ length: 1 + draw(2) }, () => draw(4))
        .filter((of, k, all) => all.indexOf(of) === k)
        .map((of) => ({ of, units: 1 + draw(10) })),
      after: [...before].map((piece) => ({ piece, lag: 0 })),
    };
  });
  return layWork(pieces, [14, 14, 14, 14], horizon);
}

const day = 1440;

/** A job of 120 tasks, two people with day windows and two of forty minutes, quiet hours, heat, deliveries: invented. */
function wholeJob(): WorkSpec {
  const draw = draws(7);
  const days = Array.from({ length: 40 }, (_, d) => d * day);
  const there = days.flatMap((d) => [
    { from: d + 360, to: d + 400 },
    { from: d + 540, to: d + 720 },
    { from: d + 780, to: d + 1020 },
    { from: d + 1140, to: d + 1180 },
  ]);
  return {
    horizon: days.length * day,
    resources: [
      { id: 'people', units: 2, there },
      { id: 'attic', units: 1 },
    ],
    calendars: [
      { id: 'quiet', open: days.map((d) => ({ from: d + 480, to: d + 1200 })) },
      { id: 'heat', heat: days.map((d) => ({ from: d + 660, to: d + 1080, minutesAnHour: 30 })) },
    ],
    tasks: Array.from({ length: 120 }, (_, i) => ({
      id: `t${i}`,
      pieces: Array.from({ length: 1 + draw(3) }, (_p, k) => ({
        id: `${k}`,
        minutes: { low: 10 + 5 * draw(4), likely: 30 + 5 * draw(3), high: 45 + 5 * draw(14) },
      })),
      needs: [
        { resource: 'people', units: draw(4) === 0 ? 2 : 1 },
        ...(draw(3) === 0 ? [{ resource: 'attic', units: 1 }] : []),
      ],
      calendars: ['quiet', ...(draw(3) === 0 ? ['heat'] : [])],
      after:
        i > 0
          ? Array.from({ length: draw(3) }, () => ({
              task: `t${Math.max(0, i - 1 - draw(12))}`,
              wait: draw(5) === 0 ? 120 : 0,
            }))
          : [],
      ...(draw(10) === 0 ? { release: draw(5) * day } : {}),
    })),
  };
}

function timed<T>(run: () => T): { readonly value: T; readonly ours: number; readonly reference: number } {
  const second = () => {
    const from = performance.now();
    multiplyAdds(1000 * perMillisecond);
    return performance.now() - from;
  };
  run();
  const before = second();
  const from = performance.now();
  const value = run();
  const ours = performance.now() - from;
  return { value, ours, reference: (before + second()) / 2 };
}

const sound = (w: WorkLayout, { end, bound }: SolvedPlan): boolean => bound <= end && lowerBounds(w).best <= bound;

/** Questions: are 60 tasks of the published kind, and a job of 120 tasks with calendars, planned within a second each? */
export function planningBench(): BenchRow[] {
  const layouts = [3, 5, 11].map(sixtyTasks);
  const sixty = layouts.map((w) => ({ w, ...timed(() => solvePlan(w)) }));
  if (!sixty.every(({ w, value }) => sound(w, value))) throw new Error('a bound lies above a plan');
  const job = wholeJob();
  const planned = timed(() => planWork(job));
  if (!planned.value.plan) throw new Error('the job is planned');
  const gap = (end: number, bound: number) => `${(((end - bound) / end) * 100).toFixed(1)} %`;
  const goal = 'at most 700 million multiply-adds, about 1 s';
  return [
    ...sixty.map(({ value, ours, reference }, k) =>
      atMost(`60 tasks, ${k + 1}: gap ${gap(value.end, value.bound)}`, { ours, reference }, 1, goal),
    ),
    atMost(
      `120 tasks in calendars: gap ${gap(planned.value.plan.end, planned.value.plan.bound)}`,
      { ours: planned.ours, reference: planned.reference },
      1,
      goal,
    ),
  ];
}
