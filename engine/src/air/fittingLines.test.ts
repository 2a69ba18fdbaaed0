import { emptyProject, openProject, resolveProject } from '@kneewall/project';
import { expect, it } from 'vitest';
import { inch } from '../physics/exact.ts';
import { scenario } from '../plan/scenario.ts';
import { drawnPieces } from './drawnPieces.ts';
import { fittingLines } from './fittingLines.ts';

const q = (value: number) => ({ value, known: 'measured' });
const round = (d: number, fittings: object, from?: string) => ({
  kind: 'round',
  diameter: q(d * inch),
  fittings,
  from,
});

function lines(sections: object, terminals: object = {}) {
  const opened = openProject(JSON.stringify({ ...emptyProject, routes: { ducts: { sections, terminals } } }));
  if (!opened.ok) throw new Error('it opens');
  return fittingLines(
    drawnPieces(
      resolveProject(opened.project).routes.ducts,
      { sections: {}, terminals: [], before: [], unhung: [], replaced: [] },
      scenario(),
    ),
  );
}

it('elbows, tees, reducers and boots say the sizes by which they are bought', () => {
  const sections = {
    a: round(8, { e: { kind: 'elbow-round', count: q(2) } }),
    b: round(6, { r: { kind: 'reducer' }, e: { kind: 'elbow-round', angle: q(45) }, x: { kind: 'boot-elbow' } }, 'a'),
    c: round(5, { t: { kind: 'tee-branch' }, d: { kind: 'damper' } }, 'a'),
  };
  const face = { width: q(10 * inch), height: q(6 * inch) };
  const terminals = { one: { section: 'b', ...face }, two: { section: 'c', ...face } };
  expect(lines(sections, terminals).map((l) => `${l.amount} ${l.like?.what}`)).toEqual([
    '2 Round elbows, 8 in (203 mm)',
    '1 Round elbows, 6 in (152 mm), 45°',
    '1 Reducers, 8 in (203 mm) to 6 in (152 mm)',
    '1 Tees or wyes for branches, 5 in (127 mm) off 8 in (203 mm)',
    '1 Boots that turn, for a 10 by 6 in (254 by 152 mm) register, collar 6 in (152 mm)',
    '1 Boots, for a 10 by 6 in (254 by 152 mm) register, collar 5 in (127 mm)',
  ]);
  expect(lines(sections, terminals).at(-1)?.what).toContain('collar 5 in (127 mm), for “two”');
});

it('are one thing in the shop where they are alike, whatever they are for', () => {
  const bend = { e: { kind: 'elbow-round' } };
  const ids = lines({ a: round(8, bend), b: round(8, bend), c: round(6, bend) }).map((l) => l.like?.id);
  expect(new Set(ids).size).toBe(2);
  expect(ids[0]).toBe(ids[1]);
});
