import type { Asked, Wall } from '@kneewall/engine';
import { describe, expect, it } from 'vitest';
import { lowerLeft, nudged, placeChanges, placeUnder, sizeOf } from './unitMove.ts';

const unit: Asked['unit'] = {
  width: 0.9,
  height: 0.7,
  depth: 0.35,
  beside: 0.2,
  above: 0.5,
  baseLeast: 0.41,
  liftMost: 1.8,
  footing: 0.8,
};
const wall: Wall = {
  id: 'north',
  name: 'North',
  width: 6,
  height: 4,
  out: { x: 3, z: 3 },
  inside: 3,
  things: [],
  ground: { depth: 3, things: [] },
};
const was = { stands: 'wall', x: 1, z: 1, out: 0.3 } as const;

describe('the unit brought to a spot', () => {
  it('has its middle there, by whole steps, on the wall and on the ground alike', () => {
    for (const spot of [
      [2, 2],
      [3, -1.5],
    ] as const) {
      const place = placeUnder(wall, unit, was, spot, 0.025);
      const [low, size] = [lowerLeft(place, unit), sizeOf(place, unit)];
      expect(Math.abs(low[0] + size[0] / 2 - spot[0])).toBeLessThanOrEqual(0.0126);
      expect(Math.abs(low[1] + size[1] / 2 - spot[1])).toBeLessThanOrEqual(0.0126);
    }
  });

  it('stays on wall and ground, and stands above the snow', () => {
    expect(placeUnder(wall, unit, was, [9, 9], 0.025)).toMatchObject({ stands: 'wall', x: 5.1, z: 3.3 });
    const place = placeUnder(wall, unit, was, [-1, -9], 0.025);
    expect(place).toMatchObject({ stands: 'ground', x: 0 });
    expect(place.out).toBeCloseTo(2.65, 9);
    expect(place.z).toBeCloseTo(0.425, 9);
  });

  it('stays on a wall that has no ground', () => {
    const bare = { ...wall, ground: { depth: 0, things: [] } };
    expect(placeUnder(bare, unit, was, [2, -1], 0.025)).toMatchObject({ stands: 'wall', z: 0 });
  });
});

it('arrow keys go through the ground line and back', () => {
  const down = nudged(wall, unit, { ...was, z: 0 }, [0, -1], 0.025);
  expect(down).toMatchObject({ stands: 'ground', out: 0 });
  const farther = nudged(wall, unit, down, [0, -1], 0.025);
  expect(farther.out).toBeCloseTo(0.025, 12);
  expect(nudged(wall, unit, down, [0, 1], 0.025)).toMatchObject({ stands: 'wall', z: 0 });
});

it('is written in one act, with a distance from the wall on the ground alone', () => {
  const paths = (stands: 'wall' | 'ground') =>
    placeChanges({ ...was, wall: 'north', stands }).map((c) => c.path.at(-1));
  expect(paths('wall')).toEqual(['wall', 'stands', 'x', 'z']);
  expect(paths('ground')).toEqual(['wall', 'stands', 'x', 'z', 'out']);
});
