import { expect, it } from 'vitest';
import { cutOff } from './cutOff.ts';

const areaOf = (spots: readonly (readonly [number, number])[]): number =>
  Math.abs(
    spots.reduce((sum, [x, y], i) => {
      const [u, v] = spots[(i + 1) % spots.length] ?? [x, y];
      return sum + (x * v - u * y) / 2;
    }, 0),
  );

it('keeps what lies within, cuts corners off, and leaves nothing of what lies outside', () => {
  const frame = [0, 0, 10, 10] as const;
  const square = [
    [2, 2],
    [4, 2],
    [4, 4],
    [2, 4],
  ] as const;
  expect(cutOff(square, frame)).toEqual(square);
  expect(
    areaOf(
      cutOff(
        [
          [-5, -5],
          [15, -5],
          [15, 15],
          [-5, 15],
        ],
        frame,
      ),
    ),
  ).toBe(100);
  expect(
    areaOf(
      cutOff(
        [
          [-10, 5],
          [5, -10],
          [20, 5],
          [5, 20],
        ],
        frame,
      ),
    ),
  ).toBe(100);
  // A right triangle with legs of 12, of which the frame takes two corners of 2 by 2.
  expect(
    areaOf(
      cutOff(
        [
          [0, 0],
          [12, 0],
          [0, 12],
        ],
        frame,
      ),
    ),
  ).toBeCloseTo(72 - 4, 12);
  expect(cutOff(square, [5, 5, 6, 6])).toEqual([]);
});
