import type { Project } from '@kneewall/project';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demo } from '../../test/demos.ts';
import { evaluate, type Finding } from '../index.ts';
import { fitsAt } from './place/fitsAt.ts';
import { lineTo, reachMap, waysOn, wayTo } from './reach.ts';
import { refrigerantOf } from './refrigerants.ts';
import type { Place, Stock, UnitBox, Wall } from './result.ts';
import { cell } from './wallGrid.ts';

const unit: UnitBox = {
  width: 0.9,
  height: 0.7,
  depth: 0.35,
  beside: 0.2,
  above: 0.5,
  baseLeast: 0.4,
  liftMost: 9,
  footing: 0.8,
};
const hung = (x: number, z: number): Place => ({ stands: 'wall', x, z, out: 0 });
const onGround = (x: number, out: number, z = 0.4): Place => ({ stands: 'ground', x, z, out });
const bare: Wall = {
  id: 'w',
  name: 'w',
  width: 8,
  height: 5,
  out: { x: 4.01, z: 3.01 },
  inside: 3,
  things: [],
  ground: { depth: 0, things: [] },
};
const yard: Wall = { ...bare, ground: { depth: 4, things: [] } };
const stock: readonly Stock[] = [5, 7.5, 10, 15].map((length) => ({ id: `s${length}`, length }));

describe('ways along a wall', () => {
  it('on a bare wall are as long as level and upright stretches together', () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 7, noNaN: true }), fc.double({ min: 0, max: 4.2, noNaN: true }), (x, z) => {
        const line = lineTo(waysOn(bare), unit, hung(x, z)) ?? Number.NaN;
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
    const line = lineTo(waysOn(wall), { ...unit, width: 0.01, height: 0.02 }, hung(5, 1)) ?? Number.NaN;
    expect(line).toBeCloseTo(4 + 2 * 2.05, 0.5);
    expect(Math.abs(line - 8.1)).toBeLessThanOrEqual(2 * cell + 1e-9);
  });

  it('do not exist to a place that is walled off', () => {
    const wall: Wall = { ...bare, things: [{ kind: 'other', x: 5, z: 0, width: 0.5, height: 5 }] };
    expect(lineTo(waysOn(wall), unit, hung(6, 1))).toBeUndefined();
  });

  it('a line that comes out beyond the wall leads nowhere, and throws nothing', () => {
    const wall: Wall = { ...bare, width: 0, height: 0 };
    expect(reachMap(wall, { unit, stock, slack: 0.4 }).best).toBeUndefined();
  });
});

describe('ways on the ground before a wall', () => {
  it('go down the wall, out, and up to the pipes', () => {
    // Out at (4.01, 3.01); pipes of a unit whose back is 1 m from the wall, 0.35 deep, its base 0.4 up and pipes 0.3 above.
    const line = lineTo(waysOn(yard), unit, onGround(1, 1)) ?? Number.NaN;
    const straight = 4.01 - 1.9 + 3.01 + 1.175 + 0.7;
    expect(Math.abs(line - straight)).toBeLessThanOrEqual(2 * cell + 1e-9);
  });

  it('do not cross a walk, and lead nowhere where walks lie all along', () => {
    const walk = (x: number, width: number): Wall => ({
      ...yard,
      ground: { ...yard.ground, things: [{ kind: 'walk', x, out: 0.5, width, depth: 0.5 }] },
    });
    expect(lineTo(waysOn(walk(0, 8)), unit, onGround(1, 1.5))).toBeUndefined();
    const round = lineTo(waysOn(walk(1, 2)), unit, onGround(1, 1.5)) ?? Number.NaN;
    const straight = lineTo(waysOn(yard), unit, onGround(1, 1.5)) ?? Number.NaN;
    // The pipes lie at 1.9; the walk ends at 3, so the line keeps right of it and comes back.
    expect(Math.abs(round - straight)).toBeLessThanOrEqual(2 * cell + 1e-9);
    const wide = lineTo(waysOn(walk(0, 5)), unit, onGround(1, 1.5)) ?? Number.NaN;
    expect(Math.abs(wide - straight - 2 * (5.05 - 4.01))).toBeLessThanOrEqual(3 * cell);
  });

  it('are drawn as long as they are counted', () => {
    const wall: Wall = { ...yard, things: [{ kind: 'window', x: 2, z: 1, width: 1, height: 1.2 }] };
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 7, noNaN: true }),
        fc.double({ min: 0.4, max: 4.2, noNaN: true }),
        (x, z) => {
          const ways = waysOn(wall);
          const drawn = wayTo(ways, unit, hung(x, z));
          const long = drawn
            .slice(1)
            .map(([a, b], i) => Math.abs(a - (drawn[i]?.[0] ?? a)) + Math.abs(b - (drawn[i]?.[1] ?? b)));
          const counted = lineTo(ways, unit, hung(x, z));
          if (counted === undefined) expect(drawn).toEqual([]);
          else expect(long.reduce((sum, l) => sum + l, 0)).toBeCloseTo(counted, 9);
        },
      ),
      { numRuns: 30 },
    );
  });
});

describe('what keeps a unit from a place', () => {
  it('is the first that is wrong: too high, nothing to stand on, ice underfoot, the property line', () => {
    const with_ = (more: Partial<Wall['ground']>): Wall => ({ ...yard, ground: { ...yard.ground, ...more } });
    expect(fitsAt(yard, { ...unit, liftMost: 1.8 }, hung(1, 1.81))).toBe('too-high');
    expect(fitsAt(yard, { ...unit, liftMost: 1.8 }, hung(1, 1.8))).toBe('yes');
    const bed = with_({ things: [{ kind: 'soft', x: 0, out: 1, width: 3, depth: 1 }] });
    expect(fitsAt(bed, unit, hung(1, 1))).toBe('no-footing');
    expect(fitsAt(bed, unit, hung(4, 1))).toBe('yes');
    const walk = with_({ things: [{ kind: 'walk', x: 0, out: 0, width: 3, depth: 1 }] });
    expect(fitsAt(walk, unit, hung(1, 1))).toBe('ice');
    expect(fitsAt(walk, unit, hung(3.31, 1))).toBe('yes');
    expect(fitsAt(walk, unit, hung(3.29, 1))).toBe('ice');
    expect(fitsAt(with_({ line: 3, lineLeast: 1.5 }), unit, onGround(1, 1.2))).toBe('line');
    expect(fitsAt(with_({ line: 3, lineLeast: 1.5 }), unit, onGround(1, 1.1))).toBe('yes');
  });

  it('over a door it drips on whoever steps out', () => {
    const wall: Wall = { ...bare, things: [{ kind: 'door', x: 3, z: 0, width: 0.9, height: 2 }] };
    expect(fitsAt(wall, unit, hung(3, 2.5))).toBe('ice');
    expect(fitsAt(wall, unit, hung(5, 2.5))).toBe('yes');
  });
});

// Common practice, no source: the length of a filled set decides how high the outdoor unit hangs.
it('with the way inside eating most of it, a short set lets the unit hang near its hole alone, a longer one lower', () => {
  const lowest = (length: number): number =>
    reachMap(bare, { unit, stock: [{ id: 's', length }], slack: 0.4 }).rows.findIndex((row) => row.length > 0) * cell;
  const heights = [3.9, 4.4, 4.9].map(lowest);
  expect(heights[0]).toBeGreaterThan(heights[1] ?? 0);
  // Half a metre more line, half a metre lower, beside the hole.
  expect((heights[1] ?? 0) - (heights[2] ?? 0)).toBeCloseTo(0.5, 6);
});

describe('the map of a wall', () => {
  const wall: Wall = { ...bare, things: [{ kind: 'bedroom', x: 5, z: 2, width: 1, height: 1.2 }] };
  const map = reachMap(wall, { unit, stock, slack: 0.4 });
  const ways = waysOn(wall);

  it('holds, for every cell, what a look at that place alone says', () => {
    for (let r = 0; r < map.rows.length; r += 7)
      for (let c = 0; c < map.columns; c += 7) {
        const [x, z] = [c * cell, r * cell];
        const line = lineTo(ways, unit, hung(x, z));
        const free = z >= unit.baseLeast - 1e-9 && fitsAt(wall, unit, hung(x, z)) === 'yes' && line !== undefined;
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

  it('an entered length beside the place is told, not passed over in silence', () => {
    const { what, facts: _ } = { facts: 0, ...found(moved({ x: 0.7, z: 1.4 }), 'run-beside') };
    expect(what).toContain('does not count');
  });

  it('a set that ends short is told at `order`, with what the next one leaves', () => {
    const { what, holdPoint } = found(moved({ x: 0.05, z: 1.4 }), 'reach');
    expect(holdPoint).toBe('order');
    expect(what).toMatch(/set ends .* short of the place; the .* one leaves .* to lose/);
  });

  it('farther from the bedroom it is quieter, by the sphere', () => {
    const level = (x: number) => Number(found(moved({ x, z: 1.4 }), 'night-sound').value);
    expect(level(0.1)).toBeLessThan(level(1.2));
  });
});
