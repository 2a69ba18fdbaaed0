import { describe, expect, it } from 'vitest';
import { placeFor, pointAfter, pointAt, withNew, without, withPoint } from './corners.ts';

const way = [
  [0, 0, 2],
  [4, 0, 2],
  [4, 3, 1],
];
const room = [
  [0, 0],
  [4, 0],
  [4, 3],
  [0, 3],
];

describe('points of a way or an outline', () => {
  it('move in plan and keep their height, without dust', () => {
    expect(withPoint(way, 1, pointAt([4, 0, 2], [0.1 + 0.2, -1e-9]))).toEqual([
      [0, 0, 2],
      [0.3, 0, 2],
      [4, 3, 1],
    ]);
  });
  it('come half way to the next, round the outline as well, and go again', () => {
    expect(pointAfter(way, 1, false, 1)).toEqual([4, 1.5, 1.5]);
    expect(pointAfter(room, 3, true, 1)).toEqual([0, 1.5]);
    expect(without(withNew(way, 1, [9, 9, 9]), 2)).toEqual(way);
    expect(withNew([], -1, [1, 2])).toEqual([[1, 2]]);
  });
  it('go on in the way’s direction past its end', () => {
    expect(pointAfter(way, 2, false, 0.5)).toEqual([4, 3.5, 1]);
    expect(pointAfter([[1, 1, 0]], 0, false, 0.5)).toEqual([1.5, 1, 0]);
  });
  it('belong to the nearest side, or at the end of a way that is far from the spot', () => {
    expect(placeFor(way, [2, 0.1], false, 0.3)).toBe(0);
    expect(placeFor(way, [4.1, 2], false, 0.3)).toBe(1);
    expect(placeFor(way, [8, 8], false, 0.3)).toBe(2);
    expect(placeFor(room, [-5, 1.5], true, 0.3)).toBe(3);
    expect(placeFor([], [1, 1], true, 0.3)).toBe(-1);
  });
});
