import { describe, expect, it } from 'vitest';
import { dragSteps, keyStep, pxPerStep, within } from './dragSteps.ts';

describe('a drag at a size grip', () => {
  it('steps outward to larger, inward to smaller, and not at all along the duct', () => {
    expect(dragSteps([0, -2 * pxPerStep], [0, -1])).toBe(2);
    expect(dragSteps([0, 3 * pxPerStep], [0, -1])).toBe(-3);
    expect(Object.is(dragSteps([500, 0], [0, -1]), 0)).toBe(true);
  });
  it('counts only what lies along a slanting direction', () => {
    const out = [Math.SQRT1_2, Math.SQRT1_2] as const;
    expect(dragSteps([2 * pxPerStep * Math.SQRT1_2, 2 * pxPerStep * Math.SQRT1_2], out)).toBe(2);
    expect(dragSteps([99, -99], out)).toBe(0);
  });
  it('takes half a step before anything moves', () => {
    expect(dragSteps([pxPerStep * 0.49, 0], [1, 0])).toBe(0);
    expect(dragSteps([pxPerStep * 0.51, 0], [1, 0])).toBe(1);
  });
  it('ends where the stock ends, by keys as well', () => {
    expect([within(-2, 5), within(9, 5)]).toEqual([0, 4]);
    expect([keyStep('ArrowUp', 4, 5), keyStep('ArrowLeft', 0, 5), keyStep('End', 1, 5), keyStep('a', 1, 5)]).toEqual([
      4,
      0,
      4,
      undefined,
    ]);
  });
});
