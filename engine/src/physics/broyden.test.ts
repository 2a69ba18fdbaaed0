import { describe, expect, it } from 'vitest';
import { broyden } from './broyden.ts';

type Map = (x: readonly number[]) => number[];

/** How many looks it takes until the map moves nothing by more than 1e-11, and where that is. */
function settled(map: Map, from: readonly number[]) {
  const onward = broyden();
  let at = [...from];
  for (let looks = 1; looks <= 60; looks++) {
    const taken = map(at);
    if (taken.every((x, i) => Math.abs(x - (at[i] ?? 0)) <= 1e-11)) return { at: taken, looks };
    at = onward(at, taken);
  }
  throw new Error('it did not settle');
}

describe('where a map no longer moves its numbers', () => {
  it('is where two lines meet, worked out by hand', () => {
    // x = 0.5 y + 1, y = -0.4 x + 2: x = 2 / 1.2, y = 2 - 0.8 / 1.2.
    const { at } = settled(([x = 0, y = 0]) => [0.5 * y + 1, -0.4 * x + 2], [0, 0]);
    expect(at[0]).toBeCloseTo(2 / 1.2, 10);
    expect(at[1]).toBeCloseTo(2 - 0.8 / 1.2, 10);
  });

  it('is the number that is its own cosine, in far fewer looks than by walking there', () => {
    const { at, looks } = settled(([x = 0]) => [Math.cos(x)], [1]);
    // Dottie number, OEIS A003957.
    expect(at[0]).toBeCloseTo(0.7390851332151607, 11);
    expect(looks).toBeLessThanOrEqual(8);
  });

  it('is found where the map leads past it by more than the whole way', () => {
    const { at } = settled(([x = 0, y = 0]) => [-1.7 * x + 0.1 * y + 5.4, -1.4 * y + 4.8 + 0.2 * x], [0, 0]);
    const [x = 0, y = 0] = at;
    expect(-1.7 * x + 0.1 * y + 5.4 - x).toBeCloseTo(0, 9);
    expect(-1.4 * y + 4.8 + 0.2 * x - y).toBeCloseTo(0, 9);
  });

  it('is the same from any start, to rounding', () => {
    const map: Map = ([x = 0, y = 0, z = 0]) => [0.1 * y + Math.tanh(0.2 * z), 1 - 0.2 * x * z, 3 + 0.05 * x - 0.1 * y];
    const [a, b] = [settled(map, [0, 0, 0]).at, settled(map, [4, -2, 7]).at];
    a.forEach((x, i) => {
      expect(x).toBeCloseTo(b[i] ?? Number.NaN, 10);
    });
  });
});
