import { describe, expect, it } from 'vitest';
import { boardOf, boxRound, closer, linesIn, withHandle } from './board.ts';
import type { Spot } from './corners.ts';

const spots: Spot[] = [
  [-1, 2],
  [9, 2],
  [4, 8],
];

describe('a drawing board', () => {
  it('brings every spot back from the screen, at the same scale both ways', () => {
    const board = boardOf(boxRound(spots), 600, 400);
    for (const spot of spots) {
      const back = board.lift(board.put(spot));
      expect(back[0]).toBeCloseTo(spot[0], 9);
      expect(back[1]).toBeCloseTo(spot[1], 9);
      const [x, y] = board.put(spot);
      expect(x > 0 && x < board.width && y > 0 && y < board.height).toBe(true);
    }
    const [a, b, up] = [board.put([0, 0]), board.put([1, 0]), board.put([0, 1])];
    expect([b[0] - a[0], a[1] - up[1]].map((v) => v.toFixed(9))).toEqual(Array(2).fill(board.perMetre.toFixed(9)));
  });
  it('is no higher than allowed and shows all the same', () => {
    const board = boardOf({ left: 0, right: 2, bottom: 0, top: 40 }, 600, 400);
    expect(board.height).toBe(400);
    expect(board.put([2, 0])[0]).toBeLessThan(600);
  });
  it('shows less of the plan round a spot when seen closer', () => {
    const box = closer(boxRound(spots), 4, [9, 2]);
    expect([(box.left + box.right) / 2, box.right - box.left]).toEqual([9, 3]);
  });
  it('has room to begin on where nothing is drawn', () => {
    expect(boxRound([]).right).toBeGreaterThan(5);
  });
  it('is ruled at whole steps', () => {
    expect(linesIn(-1.5, 2, 1)).toEqual([-1, 0, 1, 2]);
  });
  it('gives no handle to a corner right below another, unless it is the chosen one', () => {
    const places: Spot[] = [
      [0, 0],
      [100, 0],
      [100, 3],
      [200, 0],
    ];
    expect(withHandle(places, undefined)).toEqual([0, 1, 3]);
    expect(withHandle(places, 2)).toEqual([0, 2, 3]);
  });
});
