import { applyEdit, emptyProject, type Project, valueAt } from '@kneewall/project';
import { expect, it } from 'vitest';
import type { Change } from '../../../session/act.ts';
import { doneShare, putOffChanges, tickChanges, untickChanges } from './tickChanges.ts';

const done = (project: Project, changes: readonly Change[]): Project =>
  changes.reduce((p, { path, after }, i) => {
    const made = applyEdit(p, { device: 'test', seq: i + 1, path, before: valueAt(p, path), after });
    expect(made.problems).toEqual([]);
    return made.value;
  }, project);
const evening = new Date(2027, 4, 4, 19, 30);

it('writes ticks that the document takes, one after the other, and takes them back', () => {
  const first = done(emptyProject, tickChanges(emptyProject, { task: 'air/hang', part: 2, of: 8 }, evening));
  expect(doneShare(first, 'air/hang')).toBe(0.25);
  const second = done(first, tickChanges(first, { task: 'air/hang', minutes: 95 }, evening));
  expect(Object.values(second.work?.done ?? {})).toEqual([
    expect.objectContaining({ task: 'air/hang', day: '2027-05-04', at: { value: 70_200, known: 'measured' } }),
    expect.objectContaining({ minutes: { value: 5700, known: 'measured' } }),
  ]);
  expect([doneShare(second, 'air/hang'), doneShare(second, 'air/seal')]).toEqual([1, 0]);
  expect(done(second, untickChanges(second, 'air/hang')).work?.done).toEqual({});
});

it('puts a task off past the day it stands on, by one entry', () => {
  const once = done(emptyProject, putOffChanges(emptyProject, 'air/hang', '2027-05-31', evening));
  expect(Object.values(once.work?.putOff ?? {})).toMatchObject([{ task: 'air/hang', until: '2027-06-01' }]);
  const twice = done(once, putOffChanges(once, 'air/hang', '2027-05-01', evening));
  expect(Object.values(twice.work?.putOff ?? {})).toMatchObject([{ until: '2027-05-05' }]);
});
