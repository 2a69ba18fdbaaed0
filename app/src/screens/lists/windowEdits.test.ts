import { applyEdit, type Project } from '@kneewall/project';
import { expect, it } from 'vitest';
import { windowEdits } from './windowEdits.ts';

const day = 1440;
const toAdd = (from: number, to: number) => ({ task: 'a', from, to, people: 2, parts: 1, missing: 'cool' as const });

it('writes windows behind those there are, on their own days and hours', () => {
  const project: Project = { schema: 1, work: { windows: { 'window-1': { order: 'm', day: '2027-07-03' } } } };
  const edits = windowEdits(project, '2027-07-03', [
    toAdd(29 * day + 300, 29 * day + 525),
    toAdd(30 * day + 300, 30 * day + 420),
  ]);
  const after = edits.reduce((p, { path, after }, seq) => {
    const { value, problems } = applyEdit(p, { device: 'd', seq, path, before: undefined, after });
    expect(problems).toEqual([]);
    return value;
  }, project);
  // By the calendar: 29 days after 3 July is 1 August; 5:00 is 18 000 s, and 3 3/4 hours are 13 500 s.
  expect(after.work?.windows?.['window-2']).toMatchObject({
    day: '2027-08-01',
    from: { value: 18_000 },
    duration: { value: 13_500 },
    people: { value: 2 },
  });
  expect(after.work?.windows?.['window-3']).toMatchObject({ day: '2027-08-02', duration: { value: 7200 } });
  const orders = Object.values(after.work?.windows ?? {}).map((w) => w.order ?? '');
  expect([...orders].sort()).toEqual(orders);
});
