import { type Edit, emptyProject, projectText } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { baseOf, type LogRecord, recordOf } from './records.ts';
import { restore, withWaiting } from './restore.ts';

const named = (number: number, before: string | undefined, after: string): LogRecord => {
  const edit: Edit = { device: 'd', seq: number, path: ['about', 'name'], before, after };
  return recordOf('p', { number, kind: 'do', edits: [edit] });
};
const log = [named(1, undefined, 'one'), named(2, 'one', 'two'), named(3, 'two', 'three')];
const base = baseOf('p', projectText(emptyProject), 0);

describe('a stored project', () => {
  it('comes back as it was left, with every act to take back', () => {
    const back = restore({ base, records: log });
    expect(back).toMatchObject({ ok: true, project: { about: { name: 'three' } } });
    expect(back.ok && back.acts.map((a) => a.number)).toEqual([1, 2, 3]);
    expect(back.ok && back.damagedAt).toBe(undefined);
  });
  it('is the same from a later base that already holds the first acts', () => {
    const later = baseOf('p', projectText({ schema: 1, about: { name: 'two' } }), 2);
    expect(restore({ base: later, records: log })).toEqual(restore({ base, records: log }));
  });
  it('never shows what a flipped bit made of an act: it stops before it and says where', () => {
    const [first, second, third] = log as [LogRecord, LogRecord, LogRecord];
    const flipped = { ...second, edits: second.edits.map((e) => ({ ...e, after: 'twp' })) };
    const back = restore({ base, records: [first, flipped, third] });
    expect(back).toMatchObject({ ok: true, project: { about: { name: 'one' } }, damagedAt: 2 });
  });
  it('says so when an act is missing from the middle or the end', () => {
    const [first, , third] = log as [LogRecord, LogRecord, LogRecord];
    expect(restore({ base, records: [first, third] })).toMatchObject({ ok: true, damagedAt: 2 });
    const later = baseOf('p', projectText({ schema: 1, about: { name: 'two' } }), 2);
    expect(restore({ base: later, records: [first] })).toMatchObject({ ok: true, damagedAt: 2 });
  });
  it('is refused when the base itself is damaged', () => {
    expect(restore({ base: { ...base, text: base.text.replace('1', '2') }, records: log }).ok).toBe(false);
  });
  it('keeps what still waits for the store when it is opened again', () => {
    const [first, second, third] = log as [LogRecord, LogRecord, LogRecord];
    const listed = { id: 'p', name: 'p', changed: 0 };
    const waiting = [second, third].map((record) => ({ record, listed }));
    const whole = withWaiting({ base, records: [first, second] }, waiting, 'p');
    expect(whole?.records.map((r) => r.number)).toEqual([1, 2, 3]);
    expect(whole && restore(whole)).toMatchObject({ ok: true, project: { about: { name: 'three' } } });
    const never = withWaiting(undefined, [{ record: first, listed, base }], 'p');
    expect(never && restore(never)).toMatchObject({ ok: true, project: { about: { name: 'one' } } });
    expect(withWaiting(undefined, waiting, 'another')).toBe(undefined);
  });
});
