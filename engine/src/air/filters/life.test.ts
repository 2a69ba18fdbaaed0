import { describe, expect, it } from 'vitest';
import { faceFor, monthsToDouble } from './life.ts';

describe('filters', () => {
  it('a face for a pressure gives that pressure', () => {
    const filter = { pressure: 50, velocity: 1.524, exponent: 1.4 };
    const face = faceFor(30, 0.4, filter);
    expect(50 * (0.4 / face / 1.524) ** 1.4).toBeCloseTo(30, 12);
    expect(faceFor(50, 0.4, filter)).toBeCloseTo(0.4 / 1.524, 12);
  });

  it('thicker ones last longer', () => {
    const likely = [0.0254, 0.0508, 0.1016].map((t) => monthsToDouble(t).likely);
    expect(likely).toEqual([2, 3, 9]);
  });
});
