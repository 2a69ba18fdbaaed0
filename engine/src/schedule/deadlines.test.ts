import { describe, expect, it } from 'vitest';
import type { Task } from '../plan/lines.ts';
import { minutes } from '../plan/minutes.ts';
import { paperWaiting } from './awaited.ts';
import { deadlinesOf } from './deadlines.ts';
import { orderOf } from './order.ts';
import type { ScheduleResult, TaskDone, WorkAnswers } from './result.ts';

const task = (id: string, holdPoint: Task['holdPoint'], more: Partial<Task> = {}): Task => ({
  ...{ id, trade: 'air', what: id, holdPoint, duration: minutes(20, 30, 40), people: 1 },
  ...{ after: [], safeStops: ['Any time'], cautions: [] },
  ...more,
});
const perDay = 1440;

describe('a task that takes no window', () => {
  const part = (id: string, to: number) => ({
    ...{ task: id, part: 1, parts: 1, from: to - 60, to, slack: 0, decides: 0, overruns: 0 },
  });
  const found = (parts: ReturnType<typeof part>[], done: Record<string, TaskDone> = {}) =>
    deadlinesOf({
      work: { ok: true, value: { parts, unplaced: [] } as unknown as WorkAnswers },
      sum: { within: [{ task: 'form', after: ['start'], days: 60 }], done } as unknown as ScheduleResult['sum'] &
        object,
    });
  it('has its last day so many days after what it comes after, and has that whole day', () => {
    // First start on day 20 at 14:00, by hand: the sixtieth day after it is day 80, which ends with minute 81 x 1440.
    expect(found([part('start', 20 * perDay + 840)])).toEqual([
      { task: 'form', from: 20 * perDay + 840, by: 81 * perDay, days: 60 },
    ]);
  });
  it('counts from what was done, and has no day while nothing is', () => {
    const at = 3 * perDay;
    const done = { start: { parts: 1, of: 1, at } };
    expect(found([], done)).toMatchObject([{ from: at, by: 64 * perDay }]);
    expect(found([], { ...done, form: { parts: 1, of: 1, at: at + 100 } })).toMatchObject([{ done: at + 100 }]);
    expect(found([])).toEqual([]);
  });
});

it('lets an inspection come after all that is joined and before anything starts, and never wait for itself', () => {
  const order = orderOf([
    task('join', 'connect'),
    task('cover', 'close'),
    task('visit', 'close', { gates: 'start' }),
    task('power', 'start', { after: ['join'] }),
    task('first', 'start', { after: ['power'] }),
    task('before', 'connect', { after: ['early'] }),
    task('early', 'start'),
  ]);
  expect(order.get('visit')).toEqual(['join', 'before']);
  expect(order.get('power')).toEqual(['join', 'visit']);
  expect(order.get('first')).toContain('visit');
  // What the inspection itself waits for cannot wait for it.
  expect(order.get('early')).not.toContain('visit');
});

it('holds back from the first cut on what a permit covers, and of an inspection the visit', () => {
  const tasks = [
    task('carry', 'lift'),
    task('hole', 'cut'),
    task('run', 'start'),
    task('paperwork/inspect-i', 'close'),
  ];
  const paper = (id: string, kind: 'permit' | 'inspection', at: number) => ({ id, name: id, kind, at });
  const waits = paperWaiting(tasks, [paper('p', 'permit', 100), paper('i', 'inspection', 300)]);
  expect(waits.map((w) => [w.task, w.id, w.at])).toEqual([
    ['hole', 'p', 100],
    ['run', 'p', 100],
    ['paperwork/inspect-i', 'p', 100],
    ['paperwork/inspect-i', 'i', 300],
  ]);
});
