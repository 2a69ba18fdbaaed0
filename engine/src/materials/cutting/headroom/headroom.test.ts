import { emptyProject, openProject, resolveProject } from '@kneewall/project';
import { expect, it } from 'vitest';
import { inch } from '../../../physics/exact.ts';
import { cutPlan } from '../cutPlan.ts';
import { inputsOf } from '../inputsOf.ts';
import { headroomFindings } from './findings.ts';

const q = (value: number) => ({ value, known: 'measured' });
/** 12 in high inside and of 1 in board: 14 in outside. */
const box = { kind: 'board', width: q(20 * inch), height: q(12 * inch), length: q(1.2), insulation: q(0.7) };

function found(handler: object, unit: object = { handler: { height: q(10 * inch) } }) {
  const routes = { ducts: { sections: { box, far: { ...box, from: 'box' } }, handler } };
  const opened = openProject(JSON.stringify({ ...emptyProject, candidates: { unit }, routes }));
  if (!opened.ok) throw new Error('it opens');
  const project = resolveProject(opened.project);
  return cutPlan(inputsOf(project)).boxes.flatMap((b) => headroomFindings(b, project).map((f) => f.draft));
}
const inchesOf = (d: ReturnType<typeof found>[number] | undefined) =>
  d?.value.ok ? Number(d.value.value) / inch : d?.value;

it('a box at the unit is held against the height there, its middle as high as the unit’s', () => {
  const [top, foot, ...more] = found({ headroom: q(13 * inch), supplyJoint: { up: q(3 * inch) } });
  // 10 / 2 + 3 + 14 / 2 up to its top, 1 in from the boards to its underside.
  expect([top?.id, inchesOf(top), top?.limit.max]).toEqual(['headroom:box', expect.closeTo(15, 9), 13 * inch]);
  expect([foot?.id, inchesOf(foot)]).toEqual(['stands:box', expect.closeTo(1, 9)]);
  expect(more).toEqual([]);
  // 5 in are clear above its middle, an inch of them board: 8 in high, 30 in wide.
  expect(top?.facts).toMatchObject({ lowTo: expect.closeTo(8 * inch, 9), wideTo: expect.closeTo(30 * inch, 9) });
});

it('a box higher than the unit reaches below what that stands on', () => {
  expect(inchesOf(found({})[1])).toBeCloseTo(-2, 9);
});

it('asks for the height where it is not entered, and takes a unit without one to stand beside the box', () => {
  expect(found({})[0]?.value).toMatchObject({ because: 'missing', paths: ['routes.ducts.handler.headroom'] });
  const [top, ...more] = found({ headroom: q(1) }, {});
  expect(inchesOf(top)).toBeCloseTo(14, 9);
  expect(more).toEqual([]);
});
