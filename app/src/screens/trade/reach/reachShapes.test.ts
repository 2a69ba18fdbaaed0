import { describe, expect, it } from 'vitest';
import { regionPath, roomiest } from './reachShapes.ts';

/** Rows of letters, the ground last, as runs of cells: `.` is not reached. */
const rowsOf = (...drawn: readonly string[]) =>
  drawn.toReversed().map((line) =>
    [...line.matchAll(/a+|b+/g)].map((m) => ({
      from: m.index,
      to: m.index + m[0].length,
      stock: m[0].startsWith('a') ? 0 : 1,
    })),
  );

describe('the largest square of a region', () => {
  const rows = rowsOf('aaaab', '.aaab', 'aaaab', 'bb..b');

  it('lies where all of its cells are of the region', () => {
    expect(roomiest(rows, 0)).toEqual({ row: 1, column: 1, side: 3 });
    expect(roomiest(rows, 1)?.side).toBe(1);
  });

  it('is none where the length reaches nothing', () => {
    expect(roomiest(rows, 2)).toBeUndefined();
    expect(roomiest([], 0)).toBeUndefined();
  });
});

it('a region is drawn cell by cell, no more and no less than its area', () => {
  const rows = rowsOf('aab', 'a.b', 'bbb');
  const boxes = (stock: number) =>
    [
      ...regionPath(
        rows,
        stock,
        (c) => 10 * c,
        (r) => 30 - 10 * r,
      ).matchAll(/M(\S+) (\S+)H(\S+)V(\S+)H/g),
    ].map((m) => m.slice(1).map(Number));
  const area = (stock: number) =>
    boxes(stock).reduce((sum, [x = 0, y = 0, right = 0, top = 0]) => sum + (right - x) * (y - top), 0);
  expect([area(0), area(1), area(2)]).toEqual([300, 500, 0]);
});
