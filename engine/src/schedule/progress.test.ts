import { expect, it } from 'vitest';
import type { Task } from '../plan/lines.ts';
import { minutes } from '../plan/minutes.ts';
import { paceFrom, progressOf } from './progress.ts';
import type { Tick } from './result.ts';

const task = (id: string): Task => ({
  ...{ id, trade: 'air', what: id, holdPoint: 'connect', duration: minutes(20, 30, 40), people: 1, parts: 4 },
  ...{ after: [], safeStops: ['After each'], cautions: [] },
});
const tick = (id: string, at: number, share = 1, took?: number): Tick => ({
  ...{ path: `work.done.${id}-${at}`, task: id, day: '2027-05-01', at, share },
  ...(took === undefined ? {} : { took }),
});
const planned = () => ({ mean: 30, parts: 4 });

it('counts whole parts, keeps the most, and asks about ticks of no task', () => {
  const found = progressOf([task('a'), task('b')], [tick('a', 10, 0.5), tick('a', 20, 0.3), tick('gone', 30)], planned);
  expect(found.done).toEqual({ a: { parts: 2, of: 4, at: 10 } });
  expect(found.unknown.map((t) => t.task)).toEqual(['gone']);
  expect(progressOf([task('a')], [tick('a', 10, 0.49)], planned).done.a?.parts).toBe(1);
});

it('learns a pace from three times on, each against what was planned for that share', () => {
  const ticks = [tick('a', 10, 0.5, 30), tick('a', 20, 1, 30), tick('b', 30, 1, 60)];
  const found = progressOf([task('a'), task('b')], ticks, planned);
  // 30 for a planned 15 twice, 60 for 30: twice as long each time, so there is no doubt about it.
  expect(found.learned).toEqual({
    low: expect.closeTo(2),
    likely: expect.closeTo(2),
    high: expect.closeTo(2),
    from: 3,
  });
  expect(progressOf([task('a'), task('b')], ticks.slice(1), planned).learned).toBeUndefined();
});

it('gives the range of the mean that a table of Student’s t gives by hand', () => {
  // Logarithms 0, ln 2, ln 4: mean ln 2, deviation ln 2; half width 1.886 ln 2 / sqrt 3 = 0.7548.
  const found = paceFrom([1, 2, 4]);
  expect(found?.likely).toBeCloseTo(2, 9);
  expect(found?.high).toBeCloseTo(2 * Math.exp(0.75476), 3);
  expect(found?.low).toBeCloseTo(2 * Math.exp(-0.75476), 3);
});
