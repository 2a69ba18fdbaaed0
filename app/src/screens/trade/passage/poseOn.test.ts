import { describe, expect, it } from 'vitest';
import { poseOn } from './poseOn.ts';

describe('a place on a path', () => {
  const path = [0, 0, 0, 2, 0, 0, 2, 0, 1];

  it('goes evenly by what the corners move, turns counted at their reach', () => {
    expect(poseOn(path, 2, 0)).toEqual({ x: 0, y: 0, turn: 0 });
    expect(poseOn(path, 2, 0.25)).toEqual({ x: 1, y: 0, turn: 0 });
    expect(poseOn(path, 2, 0.75)).toEqual({ x: 2, y: 0, turn: 0.5 });
    expect(poseOn(path, 2, 1)).toEqual({ x: 2, y: 0, turn: 1 });
  });

  it('stays on the path before its start, after its end, and where it does not move', () => {
    expect(poseOn(path, 2, -3)).toEqual({ x: 0, y: 0, turn: 0 });
    expect(poseOn(path, 2, 9)).toEqual({ x: 2, y: 0, turn: 1 });
    expect(poseOn([1, 2, 3], 1, 0.5)).toEqual({ x: 1, y: 2, turn: 3 });
  });
});
