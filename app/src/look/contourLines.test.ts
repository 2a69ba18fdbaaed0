import { describe, expect, it } from 'vitest';
import { contourLines, roundLevels } from './contourLines.ts';

const grid = (size: number, f: (x: number, y: number) => number): number[][] =>
  Array.from({ length: size }, (_, r) => Array.from({ length: size }, (_x, c) => f(c, r)));

describe('contour lines', () => {
  it('of a plane are straight and where arithmetic says', () => {
    const [line, ...others] = contourLines(
      grid(6, (x, y) => x + 2 * y),
      5,
    );
    expect(others).toEqual([]);
    for (const [x, y] of line ?? []) expect(x + 2 * y).toBeCloseTo(5, 12);
    expect(line?.length).toBeGreaterThan(4);
  });

  it('of a hill are one closed ring at its radius', () => {
    const lines = contourLines(
      grid(41, (x, y) => Math.hypot(x - 20, y - 20)),
      12.3,
    );
    expect(lines.length).toBe(1);
    expect(lines[0]?.at(-1)).toEqual(lines[0]?.[0]);
    for (const [x, y] of lines[0] ?? []) expect(Math.abs(Math.hypot(x - 20, y - 20) - 12.3)).toBeLessThan(0.05);
  });

  it('of a saddle are two lines that do not cross', () => {
    const lines = contourLines(
      [
        [1, 0],
        [0, 1],
      ],
      0.4,
    );
    expect(lines.length).toBe(2);
    expect(lines.every((l) => l.length === 2)).toBe(true);
    // The mean is above: the two high corners hang together, each low one is cut off by itself.
    const near = (x: number, y: number) => lines.some((l) => l.every(([a, b]) => Math.hypot(a - x, b - y) < 0.5));
    expect([near(1, 0), near(0, 1), near(0, 0), near(1, 1)]).toEqual([true, true, false, false]);
  });

  it('are none where the level is not reached, or values are none', () => {
    expect(
      contourLines(
        grid(4, () => 3),
        5,
      ),
    ).toEqual([]);
    expect(
      contourLines(
        grid(4, () => Number.NaN),
        5,
      ),
    ).toEqual([]);
    expect(contourLines([], 5)).toEqual([]);
  });

  it('are drawn at round values inside the range', () => {
    expect(roundLevels(1949, 3224, 6)).toEqual([2000, 2250, 2500, 2750, 3000]);
    expect(roundLevels(0, 100, 5)).toEqual([20, 40, 60, 80]);
    expect(roundLevels(5, 5, 5)).toEqual([]);
  });
});
