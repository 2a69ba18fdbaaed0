import { describe, expect, it } from 'vitest';
import { bendsOfWay, lengthOfWay, type WayPoint } from './way.ts';

describe('a way that is drawn', () => {
  it('is as long as its stretches in space', () => {
    // 3, 4 and 12 make 13; 2, 3 and 6 make 7: whole-numbered boxes and their diagonals.
    expect(
      lengthOfWay([
        [0, 0, 0],
        [3, 4, 12],
        [5, 7, 18],
      ]),
    ).toBeCloseTo(20, 12);
    expect([lengthOfWay([]), lengthOfWay([[1, 2, 3]])]).toEqual([0, 0]);
  });

  it('turns by as much as a regular polygon does at each corner', () => {
    for (const sides of [3, 4, 6, 12]) {
      const corner = (k: number): WayPoint => [
        Math.cos((2 * Math.PI * k) / sides),
        Math.sin((2 * Math.PI * k) / sides),
        2,
      ];
      const bends = bendsOfWay(Array.from({ length: sides + 2 }, (_, k) => corner(k)));
      expect(bends.length).toBe(sides);
      for (const bend of bends) expect(bend).toBeCloseTo(360 / sides, 9);
    }
  });

  it('counts a rise as a bend, and neither a straight point, a repeated one, nor a slight turn', () => {
    const up = bendsOfWay([
      [0, 0, 0],
      [1, 0, 0],
      [1, 0, 3],
    ]);
    expect(up.map((b) => Math.round(b))).toEqual([90]);
    expect(
      bendsOfWay([
        [0, 0, 0],
        [1, 0, 0],
        [1, 0, 0],
        [2, 0, 0],
        [3, 0.1, 0],
      ]),
    ).toEqual([]);
  });
});
