import { describe, expect, it } from 'vitest';
import { ductsLine } from './ductsLine.ts';

describe('the ducts’ curve as it is drawn', () => {
  const solved = [0.1, 0.2, 0.4].map((flow) => ({ flow, pressure: 500 * flow ** 1.8 }));

  it('lies on the power law that its solved points lie on', () => {
    const drawn = ductsLine([{ flow: 0, pressure: 0 }, ...solved], 1000);
    expect(drawn.length).toBeGreaterThan(solved.length);
    for (const { flow, pressure } of drawn) expect(pressure).toBeCloseTo(500 * flow ** 1.8, 9);
    expect(drawn.at(-1)?.flow).toBeCloseTo(0.4, 12);
  });

  it('ends where the picture ends', () => {
    expect(Math.max(...ductsLine(solved, 20).map((p) => p.pressure))).toBeLessThanOrEqual(20);
  });

  it('of nothing is nothing', () => {
    expect(ductsLine([], 10)).toEqual([{ flow: 0, pressure: 0 }]);
  });
});
