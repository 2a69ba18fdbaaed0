import type { DamperSetting } from '@kneewall/engine';
import { applyEdit, emptyProject, type Project, valueAt } from '@kneewall/project';
import { expect, it } from 'vitest';
import { damperEdits } from './damperEdits.ts';

const setting = (id: string, byHand: number | undefined): DamperSetting => ({
  place: { id, at: 'collar', name: id, room: 'room', area: 0.02, registers: [], trunk: [] },
  set: 'turned',
  loss: 3,
  ...(byHand === undefined ? {} : { byHand }),
});
const settings = [setting('bare', 30), setting('has-one', 45), setting('square', undefined)];

it('the dampers that were drawn are turned, the others added, and a second time nothing is left to do', () => {
  const sections = { bare: {}, 'has-one': { fittings: { elbow: {}, d: { kind: 'damper' } } }, square: {} };
  const before = { ...emptyProject, routes: { ducts: { sections } } } as Project;
  const sectionsOf = (p: Project) => p.routes?.ducts?.sections ?? {};
  const after = damperEdits(settings, sectionsOf(before)).reduce((p, edit) => {
    const { value, problems } = applyEdit(p, { device: 'test', seq: 1, before: valueAt(p, edit.path), ...edit });
    expect(problems).toEqual([]);
    return value;
  }, before);
  const drawn = (angle: number) => ({ kind: 'damper', angle: { value: angle, known: 'estimated' } });
  expect(sectionsOf(after)).toEqual({
    bare: { fittings: { damper: drawn(30) } },
    'has-one': { fittings: { elbow: {}, d: drawn(45) } },
    square: {},
  });
  expect(damperEdits(settings, sectionsOf(after))).toEqual([]);
});
