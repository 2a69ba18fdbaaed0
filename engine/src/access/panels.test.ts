import { emptyProject, openProject, resolveProject } from '@kneewall/project';
import { describe, expect, it } from 'vitest';
import { scenario } from '../plan/scenario.ts';
import { membersOf } from './members.ts';
import { panelsOf } from './panels.ts';

const inch = 0.0254;
const q = (value: number) => ({ value, known: 'measured' });
const unit = { width: 44 * inch, depth: 22 * inch };
function routesOf(platform: object, passages: object = {}, service: object = {}) {
  const routes = { access: { platform, service }, passages };
  const opened = openProject(JSON.stringify({ ...emptyProject, routes }));
  if (!opened.ok) throw new Error('it opens');
  return resolveProject(opened.project).routes;
}
const inches = (m: number) => Math.round((m / inch) * 1000) / 1000;
function panels(...args: Parameters<typeof routesOf>) {
  const { thickness, pieces } = panelsOf(routesOf(...args), unit, scenario());
  return [inches(thickness), ...pieces.map((p) => [p.count, inches(p.length), inches(p.width)])];
}

const three = { joists: q(3), sheet: q(0.75 * inch) };

describe('panels of platform and floor', () => {
  it('lie under the unit from outer face to outer face of its joists, unless a floor is fixed there', () => {
    // Three joists at 16 in: 33 1/2 in across; along them the unit's longer side.
    expect(panels({ ...three, deck: 'loose' })).toEqual([0.75, [1, 33.5, 44]]);
    expect(panels({ ...three, deck: 'yes' })).toEqual([0.75]);
    expect(panels({ joists: q(3), deck: 'loose' })).toEqual([23 / 32].map((x) => Math.round(x * 1000) / 1000));
  });

  it('come in strips across all joists where the hatch is smaller', () => {
    const hatch = { kind: 'hatch', width: q(20 * inch), height: q(22 * inch) };
    expect(panels({ ...three, deck: 'loose' }, { hatch })).toEqual([0.75, [2, 33.5, 22]]);
  });

  it('take the place of floor boards, never beside them: the same floor area either way', () => {
    const way = { kind: 'crawl', length: q(200 * inch), floor: q(13 * inch) };
    const service = { depth: q(33 * inch), width: q(30 * inch) };
    const made = (floor: string) => {
      const routes = routesOf({ deck: 'none', floor }, { way }, service);
      const boards = membersOf(routes, scenario()).map((m) => [m.count * m.length * 5.5 * inch, m.name]);
      const sheets = panelsOf(routes, unit, scenario()).pieces.map((p) => [p.count * p.length * p.width, p.name]);
      return { boards, sheets };
    };
    const [asBoards, asPanels] = [made('boards'), made('panels')];
    expect([asBoards.sheets, asPanels.boards]).toEqual([[], []]);
    // 33 in deep are six boards, 11 in lacking are two: nothing rounded up, so both floors are the same area.
    const area = (rows: (string | number)[][]) => rows.reduce((a, [x]) => a + Number(x), 0);
    expect(area(asPanels.sheets)).toBeCloseTo(area(asBoards.boards), 9);
    expect(area(asPanels.sheets)).toBeCloseTo((33 * 33.5 + 11 * 200) * inch ** 2, 9);
  });
});
