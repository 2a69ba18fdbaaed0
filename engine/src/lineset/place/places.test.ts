import { describe, expect, it } from 'vitest';
import { reachMap } from '../reach.ts';
import type { Stock, UnitBox, Wall } from '../result.ts';
import { spareLoop } from '../spareLoop.ts';
import { cell } from '../wallGrid.ts';
import { fitsAt } from './fitsAt.ts';
import { goodPlaces } from './goodPlaces.ts';
import { soundsAt } from './soundsAt.ts';

const unit: UnitBox = {
  width: 0.9,
  height: 0.7,
  depth: 0.35,
  beside: 0.2,
  above: 0.5,
  baseLeast: 0.4,
  liftMost: 1.8,
  footing: 0.8,
};
const wall: Wall = {
  id: 'w',
  name: 'w',
  width: 6,
  height: 4,
  out: { x: 4, z: 2.5 },
  inside: 3,
  things: [{ kind: 'bedroom', x: 4.6, z: 2.6, width: 0.8, height: 1 }],
  ground: { depth: 3, things: [{ kind: 'walk', x: 4.5, out: 0, width: 1, depth: 3 }], line: 6 },
};
const stock: readonly Stock[] = [5, 7.5, 10].map((length) => ({ id: `s${length}`, length }));

describe('places worth choosing', () => {
  const places = goodPlaces([{ wall }], { unit, stock, slack: 0.4, more: 0.3, power: 62, nightMost: 40 });

  it('are places, above the snow, that their set reaches', () => {
    expect(places.length).toBeGreaterThan(2);
    for (const p of places) {
      expect(fitsAt(wall, unit, p)).toBe('yes');
      expect(p.z).toBeGreaterThanOrEqual(unit.baseLeast - 1e-9);
      expect(p.spare).toBeCloseTo((stock[p.stock]?.length ?? 0) - p.needed, 12);
      expect(p.spare).toBeGreaterThanOrEqual(0.3 - 1e-9);
    }
  });

  it('come with the shorter set first, and no place of its kind is quieter', () => {
    const sets = places.map((p) => p.stock);
    expect(sets).toEqual([...sets].sort((a, b) => a - b));
    for (const p of places) {
      const { rows } = reachMap(wall, { unit, stock, slack: 0.7 }, p.stands);
      rows.forEach((row, r) => {
        for (const { from, to, stock: k } of row.filter((run) => run.stock === p.stock))
          for (let c = from; c < to; c++)
            if (r % 4 === 0 && c % 4 === 0 && k === p.stock) {
              const at = {
                stands: p.stands,
                x: c * cell,
                z: p.stands === 'wall' ? r * cell : 0.4,
                out: p.stands === 'wall' ? 0 : r * cell,
              };
              const other = soundsAt(wall, unit, at, 62).bedroom ?? 0;
              expect(Math.round(other)).toBeGreaterThanOrEqual(Math.min(40, Math.round(p.bedroom ?? 0)));
            }
      });
    }
  });
});

describe('sound beyond the wall', () => {
  const at = { stands: 'ground', x: 1, z: 0.4, out: 0.5 } as const;
  const with_ = (more: Partial<Wall['ground']>): Wall => ({ ...wall, ground: { ...wall.ground, ...more } });
  const neighbour = { x: 1.45, out: 10.675, z: 0.75 };

  it('falls with distance over a quarter sphere', () => {
    // 10 m from the middle of the unit, level with it: 65 - 20 - 4.971 dB.
    expect(soundsAt(with_({ neighbour }), unit, at, 65).neighbour).toBeCloseTo(65 - 20 - 10 * Math.log10(Math.PI), 9);
  });

  it('is twice as strong beside a second wall that stands right at it, hardly more beside one far off', () => {
    const plain = soundsAt(with_({ neighbour }), unit, at, 65).neighbour ?? 0;
    const beside = (mirror: number) => (soundsAt(with_({ neighbour, mirror }), unit, at, 65).neighbour ?? 0) - plain;
    expect(beside(1.45)).toBeCloseTo(10 * Math.log10(2), 9);
    // Mirrored 40 m aside: 10 m straight, 41.2 m by the wall.
    expect(beside(21.45)).toBeCloseTo(10 * Math.log10(1 + 100 / 1700), 6);
  });

  it('is held back by a fence that hides the unit, the more the higher, and not by one that does not', () => {
    const behind = (top: number) => soundsAt(with_({ neighbour, fence: { out: 3, top } }), unit, at, 65).neighbour ?? 0;
    const plain = soundsAt(with_({ neighbour }), unit, at, 65).neighbour ?? 0;
    expect(behind(0.7)).toBe(plain);
    expect(plain - behind(1.2)).toBeGreaterThan(4.7);
    expect(behind(1.8)).toBeLessThan(behind(1.2));
    expect(plain - behind(30)).toBeCloseTo(20, 9);
  });
});

describe('the spare of a set', () => {
  it('makes one flat turn, or as many as its room asks, never tighter than its bend', () => {
    expect(spareLoop(3, 0.15, 0.05)).toEqual({ length: 3, turns: 1, across: 3 / Math.PI + 0.05 });
    expect(spareLoop(3, 0.15, 0.05, 0.6).turns).toBe(2);
    expect(spareLoop(3, 0.15, 0.05, 0.1).turns).toBe(3);
    expect(spareLoop(3, 0.4, 0.05, 0.1).turns).toBe(1);
    expect(spareLoop(0.5, 0.15, 0.05)).toEqual({ length: 0.5, turns: 0, across: 0 });
  });
});
