import { emptyProject, openProject, resolveProject } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { inch } from '../physics/exact.ts';
import { scenario } from '../plan/scenario.ts';
import { membersOf } from './members.ts';

const q = (value: number) => ({ value, known: 'measured' });
function members(platform: object, passages: object = {}, service: object = {}) {
  const routes = { access: { platform, service }, passages };
  const opened = openProject(JSON.stringify({ ...emptyProject, routes }));
  if (!opened.ok) throw new Error('it opens');
  return membersOf(resolveProject(opened.project).routes, scenario()).map((m) => [
    m.size,
    m.count,
    Math.round((m.length / inch) * 1000) / 1000,
  ]);
}

describe('timber of platform and floor', () => {
  it('reaches across the joists that carry the unit, from outer face to outer face', () => {
    // Three joists at 16 in: 32 in between their middles, and half a joist at either end.
    const cross = { cross: 'flat-2x4', crossing: q(2), joists: q(3), deck: 'yes' };
    expect(members(cross)).toEqual([['2x4', 2, 33.5]]);
    expect(members({ ...cross, cross: 'none' })).toEqual([]);
  });

  it('floors the space in front of the unit only where there is none, each board ending on a joist', () => {
    const service = { depth: q(30 * inch), width: q(30 * inch) };
    // 30 in deep: six boards of 5 1/2 in; 30 in wide: two bays of 16 in, and a joist.
    expect(members({ deck: 'none' }, {}, service)).toEqual([['2x6', 6, 33.5]]);
    expect(members({ deck: 'yes' }, {}, service)).toEqual([]);
    expect(members({ deck: 'loose' }, {}, service)).toEqual([]);
  });

  it('widens the floor along the way to 24 in, in boards of 8 ft at most that meet on joists', () => {
    const way = { kind: 'crawl', length: q(200 * inch), floor: q(12 * inch) };
    // 12 in are lacking: three boards; 200 in: 96, 96 and 8, whether joists lie 16 or 24 in apart.
    expect(members({ deck: 'yes' }, { way })).toEqual([
      ['2x6', 6, 96],
      ['2x6', 3, 8],
    ]);
    expect(members({ deck: 'yes', spacing: q(24 * inch) }, { way })).toEqual([
      ['2x6', 6, 96],
      ['2x6', 3, 8],
    ]);
    expect(members({ deck: 'yes', spacing: q(19.2 * inch) }, { way: { ...way, length: q(90 * inch) } })).toEqual([
      ['2x6', 3, 90],
    ]);
    expect(members({ deck: 'yes' }, { way: { ...way, floor: q(24 * inch) } })).toEqual([]);
    expect(members({ deck: 'yes' }, { way: { ...way, kind: 'hatch' } })).toEqual([]);
  });
});
