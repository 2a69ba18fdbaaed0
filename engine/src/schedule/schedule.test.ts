import type { Project } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { demo, demoNames } from '../../test/demos.ts';
import { evaluate, runJob } from '../index.ts';
import { checkPlan, type WorkPiece } from '../physics/schedule/index.ts';
import type { Task } from '../plan/lines.ts';
import { minutes } from '../plan/minutes.ts';
import { atticClock } from './atticClock.ts';
import { orderOf } from './order.ts';
import { firstPlan, planJob } from './planJob.ts';
import type { WorkAnswers } from './result.ts';
import { firstPlanKind, type WorkInputs, workPlanKind } from './workJob.ts';

const quiet = () => undefined;
const unpadded = ({ planned: _margin, ...piece }: WorkPiece): WorkPiece => piece;

function planned(project: Project) {
  const first = evaluate(project, {});
  const job = first.wanted.find((j) => j.kind === workPlanKind);
  if (!job) throw new Error('no plan of work is asked for');
  const work = runJob(job, { blob: quiet, tell: quiet }) as WorkAnswers;
  const second = evaluate(project, { [job.key]: work });
  const frame = second.plan.trades.schedule?.frame;
  if (!frame?.ok) throw new Error('no windows');
  return { first, second, job, inputs: job.inputs as WorkInputs, work, frame: frame.value };
}

describe.each(demoNames)('the plan of work of %s', (name) => {
  const { first, second, job, inputs, work, frame } = planned(demo(name));
  const tasks = new Map(first.plan.tasks.map((t) => [t.id, t]));

  it('says of every task with what it is done and when it counts as done', () => {
    for (const t of tasks.values()) {
      expect(t.tools?.length, t.id).toBeGreaterThan(0);
      expect(t.doneWhen?.length, t.id).toBeGreaterThan(0);
    }
  });

  it('ends every part within one window, with those people there', () => {
    expect(work.parts.length).toBeGreaterThan(20);
    for (const p of work.parts) {
      const around = frame.windows.filter((w) => w.from <= p.from && p.to <= w.to);
      expect(around.length, p.task).toBe(1);
      expect(around[0]?.people, p.task).toBeGreaterThanOrEqual(tasks.get(p.task)?.people ?? 99);
    }
    const placed = work.parts.map((p) => ({ task: p.task, piece: String(p.part), from: p.from, to: p.to }));
    const left = new Set(work.unplaced.map((u) => u.task));
    // Margins may be smaller where windows are short; the mean of the three points never is.
    const kept = inputs.spec.tasks.filter((t) => !left.has(t.id));
    const spec = { ...inputs.spec, tasks: kept.map((t) => ({ ...t, pieces: t.pieces.map(unpadded) })) };
    expect(checkPlan(spec, placed)).toEqual([]);
  });

  it('puts nobody into the attic in an hour that is shut, nor for longer than its hours leave', () => {
    for (const p of work.parts.filter((x) => (tasks.get(x.task)?.place ?? 'attic') === 'attic')) {
      let left = 0;
      for (let t = p.from; t < p.to; t++) {
        const day = frame.attic.find((d) => d.from <= t && t < d.from + 1440);
        const allowed = day?.minutes[Math.floor((t - (day?.from ?? 0)) / 60)] ?? 0;
        expect(allowed, `${p.task} at ${t}`).toBeGreaterThan(0);
        left += allowed / 60;
      }
      const { duration } = tasks.get(p.task) as Task;
      const mean = (duration.low + 4 * duration.likely + duration.high) / 6 / 60 / p.parts;
      expect(left, p.task).toBeGreaterThanOrEqual(mean * frame.pace - 1e-6);
    }
    expect(work.atticOver).toBe(0);
  });

  it('has a first plan that keeps to the same rules, by which nothing is judged', () => {
    const quick = first.wanted.find((j) => j.kind === firstPlanKind);
    expect(quick?.inputs).toEqual(job.inputs);
    const found = firstPlan(inputs);
    expect([found.wrong, found.atticOver]).toEqual([[], 0]);
    expect(found.parts.length).toBeGreaterThan(20);
    if (found.unplaced.length === 0 && found.margin === work.margin) expect(found.end).toBeGreaterThanOrEqual(work.end);
    const { plan, wanted } = evaluate(demo(name), { [quick?.key ?? '']: found });
    expect(plan.trades.schedule?.first).toEqual(found);
    expect(plan.findings.find((f) => f.id === 'schedule/placed')).toMatchObject({
      because: 'pending',
      needs: [job.key],
    });
    expect(wanted.map((j) => j.kind).filter((k) => k.startsWith('schedule/'))).toEqual([workPlanKind]);
    expect(second.plan.trades.schedule?.first).toBeUndefined();
  });

  it('is wanted once, pending until then, and said in findings that agree with it', () => {
    const own = (plan: typeof first.plan) => plan.findings.filter((f) => f.trade === 'schedule');
    expect(own(first.plan).every((f) => f.because === 'pending' && f.needs?.[0] === job.key)).toBe(true);
    expect(second.wanted.some((j) => j.kind.startsWith('schedule/'))).toBe(false);
    const status = (id: string) => own(second.plan).find((f) => f.id === `schedule/${id}`)?.status;
    expect(status('placed')).toBe(work.unplaced.length === 0 ? 'ok' : 'fails');
    expect([status('safe-stops'), status('attic')]).toEqual(['ok', 'ok']);
  });
});

it('holds Juniper Flat to the cool end of a July day', () => {
  const { frame } = planned(demo('juniper-flat'));
  expect(frame.attic[0]?.minutes.slice(10, 18)).toEqual(Array(8).fill(0));
  expect(frame.attic[0]?.minutes[5]).toBe(60);
});

it('fails at “decide” where a task has none of its safe stops within any window', () => {
  const project = structuredClone(demo('tern-ledge')) as { work: { windows: Record<string, { duration: unknown }> } };
  for (const w of Object.values(project.work.windows)) w.duration = { value: 3600, known: 'estimated' };
  const { second, work } = planned(project as unknown as Project);
  const found = second.plan.findings.find((f) => f.id === 'schedule/window:access/up');
  expect(found).toMatchObject({ status: 'fails', holdPoint: 'decide', value: 3600 });
  // Three points of 45, 90 and 180 minutes: a mean of 97.5.
  expect(found?.limit?.min).toBeGreaterThanOrEqual(97.5 * 60);
  expect(work.wrong).toEqual([]);
});

const julyAt = (minute = 0): string => new Date(Date.UTC(2027, 6, 3) + minute * 60_000).toISOString();
const dateOf = (minute?: number): string => julyAt(minute).slice(0, 10);
const clockOf = (minute?: number): string => julyAt(minute).slice(11, 16);

it('says which windows would hold what has no place in July, soonest first, and with them all has one', () => {
  const project = structuredClone(demo('juniper-flat')) as unknown as { work: { windows: Record<string, object> } };
  const before = planned(project as unknown as Project);
  const { toAdd, unplaced } = before.work;
  expect(new Set(toAdd.map((w) => w.task))).toEqual(new Set(unplaced.map((u) => u.task)));
  expect(toAdd.some((w) => w.missing === 'cool')).toBe(true);
  const text = before.second.plan.findings.find((f) => f.id === 'schedule/placed')?.mend;
  expect(text).toContain(
    `${dateOf(toAdd[0]?.from)} from ${clockOf(toAdd[0]?.from)} to ${clockOf(toAdd[0]?.to)} with 2 people`,
  );
  const order = orderOf(before.first.plan.tasks.filter((t) => t.holdPoint !== 'season'));
  toAdd.forEach((w, i) => {
    const is = (value: number) => ({ value: 60 * value, known: 'estimated' });
    // Clear of every other window, and after the end of all that comes before.
    for (const other of [...before.frame.windows, ...toAdd.slice(0, i)])
      expect(w.to <= other.from || w.from >= other.to).toBe(true);
    for (const id of order.get(w.task) ?? [])
      for (const p of before.work.parts.filter((x) => x.task === id)) expect(p.to).toBeLessThanOrEqual(w.from);
    project.work.windows[`z${i}`] = {
      order: `z${i}`,
      day: dateOf(w.from),
      from: is(w.from % 1440),
      duration: is(w.to - w.from),
    };
  });
  const { work } = planned(project as unknown as Project);
  expect([work.unplaced, work.toAdd, work.wrong, work.atticOver]).toEqual([[], [], [], 0]);
});

const minutesOf = (value: number) => ({ value: 60 * value, known: 'estimated' });
const dayAt = (day: string): number => (Date.parse(day) - Date.parse('2027-05-01')) / 60_000;

it('keeps to ticks, deliveries, quiet hours and times without power, and asks about what it cannot use', () => {
  const project = structuredClone(demo('tern-ledge')) as unknown as { work: Record<string, object> };
  Object.assign(project.work, {
    done: {
      first: { order: 'a', task: 'access/frame', day: '2027-05-01', at: minutesOf(12 * 60) },
      gone: { order: 'b', task: 'air/no-such-task', day: '2027-05-01', at: minutesOf(12 * 60) },
    },
    putOff: { later: { order: 'a', task: 'access/platform', until: '2027-05-08' } },
    off: { cut: { order: 'a', what: 'power', day: '2027-05-15' } },
    deliveries: {
      boat: { order: 'a', name: 'Boat', day: '2027-05-08', brings: 'dealer' },
      freight: { order: 'b', name: 'Freight', day: '2027-06-19', brings: 'electrical' },
      post: { order: 'c', name: 'Post', goods: 'Plugs for two pressure test ports; No such thing' },
    },
    dates: { ...project.work.dates, doneBy: '2027-05-29', quietFrom: minutesOf(18 * 60), quietTo: minutesOf(10 * 60) },
  });
  const { second, work, frame, job } = planned(project as unknown as Project);
  const tasks = new Map(second.plan.tasks.map((t) => [t.id, t]));
  const startOf = (id: string) => Math.min(...work.parts.filter((p) => p.task === id).map((p) => p.from));
  expect(work.wrong).toEqual([]);
  expect(work.parts.some((p) => p.task === 'access/frame')).toBe(false);
  expect(work.parts.every((p) => p.from >= 12 * 60)).toBe(true);
  expect(startOf('access/platform')).toBeGreaterThanOrEqual(dayAt('2027-05-08'));
  // No time of day is entered: it counts from six in the evening, when that Saturday's window is over.
  expect(startOf('equipment/receive')).toBeGreaterThanOrEqual(dayAt('2027-05-08') + 18 * 60);
  for (const p of work.parts) {
    const hours = [p.from, p.to].map((t) => (t % 1440) / 60);
    if (tasks.get(p.task)?.noisy) expect((hours[0] ?? 0) >= 10 && (hours[1] ?? 0) <= 18, p.task).toBe(true);
    const cut = dayAt('2027-05-15');
    if (tasks.get(p.task)?.needs?.includes('power')) expect(p.to <= cut || p.from >= cut + 1440, p.task).toBe(true);
  }
  // Whatever is electrical comes after the last window, and takes with it what waits for it.
  expect(work.unplaced.find((u) => u.task === 'circuit/pull')).toMatchObject({
    because: 'delivery',
    names: ['freight'],
  });
  const status = (id: string) => second.plan.findings.find((f) => f.id === `schedule/${id}`);
  expect(status('delivery:freight')).toMatchObject({ status: 'fails' });
  expect(status('delivery:freight')?.what).toContain('Freight');
  expect(status('delivery:boat')).toBeUndefined();
  // What has no day has not come: what needs it has no place and is named, all else is planned.
  expect(work.unplaced.find((u) => u.task === 'air/seal')).toMatchObject({ because: 'no-day', names: ['post'] });
  expect(status('no-day:post')).toMatchObject({ status: 'unknown', needs: ['work.deliveries.post.day'] });
  expect(status('no-day:post')?.what).toContain('Seal');
  expect(work.parts.some((p) => p.task === 'air/hang')).toBe(true);
  const list = second.plan.trades.materials?.list;
  expect(list?.ok && list.value.unused.filter((u) => u.because === 'goods')).toEqual([
    { path: 'work.deliveries.post.goods', name: 'No such thing', because: 'goods' },
  ]);
  expect(status('ticks')).toMatchObject({ status: 'fails', value: 1 });
  expect(second.plan.trades.schedule?.sum?.done).toEqual({ 'access/frame': { parts: 2, of: 2, at: 720 } });
  expect((job.inputs as WorkInputs).stages?.length).toBe(1);
  // Mastic cures a day before the air is balanced.
  const sealed = Math.max(...work.parts.filter((p) => p.task === 'air/seal').map((p) => p.to));
  if (work.parts.some((p) => p.task === 'air/balance'))
    expect(startOf('air/balance')).toBeGreaterThanOrEqual(sealed + 1440);
  expect(frame.ticks.length).toBe(2);
});

const task = (id: string, holdPoint: Task['holdPoint'], after: readonly string[] = []): Task => ({
  ...{ id, trade: 'air', what: id, holdPoint, duration: minutes(20, 30, 40), people: 1 },
  ...{ after, safeStops: ['Any time'], cautions: [] },
});

it('takes hold points for order where a task names nothing, and never lets two wait for each other', () => {
  const order = orderOf([
    task('a', 'connect'),
    task('b', 'cut', ['a']),
    task('c', 'decide'),
    task('d', 'close', ['gone']),
  ]);
  expect(Object.fromEntries(order)).toEqual({ a: ['c'], b: ['a'], c: [], d: [] });
});

it('leaves out what no window holds and what waits for it, and plans the rest', () => {
  const needs = [{ resource: 'people', units: 1 }];
  const one = (id: string, length: number, after: string[] = []) => ({
    ...{ id, pieces: [{ id: '1', minutes: length }], needs, calendars: ['free'] },
    after: after.map((t) => ({ task: t })),
  });
  const free = [{ from: 60, to: 120 }];
  const spec = {
    ...{ horizon: 240, resources: [{ id: 'people', units: 1, there: free }] },
    calendars: [{ id: 'free', open: free }],
    tasks: [one('long', 90), one('then', 10, ['long']), one('short', 30)],
  };
  const found = planJob({ spec, attic: [], unplaced: [], mostPeople: 1 }, quiet);
  expect(found.unplaced.map((u) => [u.task, u.because])).toEqual([
    ['long', 'no-window'],
    ['then', 'waits'],
  ]);
  expect(found.parts).toMatchObject([{ task: 'short', from: 60, to: 90 }]);
});

it('takes the least of the solar hours that a clock hour may touch', () => {
  const solar = Array.from({ length: 24 }, (_, h) => (h === 12 ? 0 : 60));
  expect(atticClock(solar, 0).flatMap((m, h) => (m === 0 ? [h] : []))).toEqual([11, 12, 13]);
  expect(atticClock(solar, 1.3).flatMap((m, h) => (m === 0 ? [h] : []))).toEqual([13, 14]);
});
