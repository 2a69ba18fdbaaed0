import { describe, expect, it } from 'vitest';
import { gridStep, snapped } from './snap.ts';

const guides = { step: 0.05, ends: [[1.013, 2.027, 2.4]], beside: [[3.338, 0.5]], reach: 0.15 };

describe('a dragged corner', () => {
  it('stands on whole steps: 50 mm, or 2 in, which is 50.8 mm', () => {
    expect(snapped([0.5123, -0.2312], { ...guides, ends: [], beside: [] }).spot.map((v) => v.toFixed(6))).toEqual([
      '0.500000',
      '-0.250000',
    ]);
    expect(gridStep.us).toBeCloseTo(2 * 0.0254, 12);
  });
  it('takes over the end of another section exactly, wherever it lies, and says which', () => {
    expect(snapped([1.1, 2.1], guides)).toEqual({ spot: [1.013, 2.027], end: [1.013, 2.027, 2.4] });
    expect(snapped([1.2, 2.2], guides).end).toBe(undefined);
  });
  it('takes the nearer of two ends', () => {
    const ends = [
      [0, 0],
      [0.1, 0],
    ];
    expect(snapped([0.06, 0], { ...guides, ends }).spot).toEqual([0.1, 0]);
  });
  it('stands square with the corner beside it, though that is on no step', () => {
    expect(snapped([3.35, 1.02], guides).spot).toEqual([3.338, 1]);
  });
});
