import type { Project } from '@kneewall/project';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { evaluate, type Finding } from '../index.ts';
import { fitsAt, lineTo, reachMap, waysOn } from './reach.ts';
import { refrigerantOf } from './refrigerants.ts';
import type { Stock, UnitBox, Wall } from './result.ts';
import { cell } from './wallGrid.ts';

const unit: UnitBox = { width: 0.9, height: 0.7, beside: 0.2, above: 0.5, baseLeast: 0.4 };
const bare: Wall = { id: 'w', name: 'w', width: 8, height: 5, out: { x: 4.01, z: 3.01 }, inside: 3, things: [] };
const stock: readonly Stock[] = [5, 7.5, 10, 15].map((length) => ({ id: `s${length}`, length }));

describe('ways along a wall', () => {
  it('on a bare wall are as long as level and upright stretches together', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 7, noNaN: true }), fc.double({ min: 0, max: 4.2, noNaN: true }), (x, z) => {
        const line = lineTo(waysOn(bare), unit, x, z) ?? Number.NaN;
        const straight = Math.abs(x + unit.width - bare.out.x) + Math.abs(z + 0.3 - bare.out.z);
        expect(Math.abs(line - straight)).toBeLessThanOrEqual(2 * cell);
      }),
    );
  });

  it('go round a window by hand: up over its top, across and down again', () => {
    // From (1, 1) to (5, 1) stands a window from 2 to 4 m, 0 to 3 m up, with 50 mm kept free: over 3.05 m.
    const wall: Wall = {
      ...bare,
      out: { x: 1.01, z: 1.01 },
      things: [{ kind: 'window', x: 2, z: 0, width: 2, height: 3 }],
    };
    const line = lineTo(waysOn(wall), { ...unit, width: 0.01, height: 0.02 }, 5, 1) ?? Number.NaN;
    expect(line).toBeCloseTo(4 + 2 * 2.05, 0.5);
    expect(Math.abs(line - 8.1)).toBeLessThanOrEqual(2 * cell + 1e-9);
  });

  it('do not exist to a place that is walled off', () => {
    const wall: Wall = { ...bare, things: [{ kind: 'other', x: 5, z: 0, width: 0.5, height: 5 }] };
    expect(lineTo(waysOn(wall), unit, 6, 1)).toBeUndefined();
  });

  it('a line that comes out beyond the wall leads nowhere, and throws nothing', () => {
    const wall: Wall = { ...bare, width: 0, height: 0 };
    expect(reachMap(wall, unit, stock, 0.4).best).toBeUndefined();
  });
});

describe('the map of a wall', () => {
  const wall: Wall = { ...bare, things: [{ kind: 'bedroom', x: 5, z: 2, width: 1, height: 1.2 }] };
  const map = reachMap(wall, unit, stock, 0.4);
  const ways = waysOn(wall);

  it('holds, for every cell, what a look at that place alone says', () => {
    for (let r = 0; r < map.rows.length; r += 7)
      for (let c = 0; c < map.columns; c += 7) {
        const [x, z] = [c * cell, r * cell];
        const line = lineTo(ways, unit, x, z);
        const free = z >= unit.baseLeast - 1e-9 && fitsAt(wall, unit, x, z) === 'yes' && line !== undefined;
        const k = free ? stock.findIndex((s) => s.length >= 3 + line + 0.4 - 1e-9) : -1;
        const span = map.rows[r]?.find((s) => s.from <= c && c < s.to);
        expect(span?.stock ?? -1, `${x} ${z}`).toBe(k);
      }
  });

  it('never lies below the snow, nor off the wall', () => {
    map.rows.forEach((row, r) => {
      if (r * cell < unit.baseLeast - 1e-9) expect(row).toEqual([]);
      for (const { to } of row) expect((to - 1) * cell + unit.width).toBeLessThanOrEqual(wall.width + 1e-9);
    });
  });
});

it('knows refrigerants however they are written, and says what it does not know', () => {
  expect(refrigerantOf('R-32')).toEqual(refrigerantOf('r32'));
  expect(refrigerantOf('410A')).toBe('none');
  expect(refrigerantOf('moon gas')).toBe('unknown');
});

const n = (value: number) => ({ value, known: 'measured' });
function moved(place: { x: number; z: number }): Project {
  const project = structuredClone(demo('tern-ledge')) as unknown as {
    routes: { lineset: { place: Record<string, unknown> } };
  };
  Object.assign(project.routes.lineset.place, { x: n(place.x), z: n(place.z) });
  return project as unknown as Project;
}
const found = (project: Project, id: string): Finding => {
  const finding = evaluate(project, {}).plan.findings.find((f) => f.id === `lineset/${id}`);
  if (!finding) throw new Error(`no finding ${id}`);
  return finding;
};

describe('what the outdoor unit’s place is judged by', () => {
  it('the farther it is moved, the longer the set', () => {
    const set = (x: number) => evaluate(moved({ x, z: 1.4 }), {}).plan.trades.lineset?.set;
    const [near, far] = [set(1.2), set(0.05)];
    expect(near?.ok && far?.ok && far.value.length > near.value.length).toBe(true);
  });

  it('below the snow it fails, over a door it fails, off the wall it fails', () => {
    expect(found(moved({ x: 0.7, z: 0.6 }), 'snow').status).toBe('fails');
    expect(found(moved({ x: 0.7, z: 1.4 }), 'snow').status).toBe('ok');
    expect(found(moved({ x: 2.5, z: 1.4 }), 'place').status).toBe('fails');
    expect(found(moved({ x: 7, z: 1.4 }), 'place').status).toBe('fails');
  });

  it('farther from the bedroom it is quieter, by the sphere', () => {
    const level = (x: number) => Number(found(moved({ x, z: 1.4 }), 'night-sound').value);
    expect(level(0.1)).toBeLessThan(level(1.2));
  });
});
