import { describe, expect, it } from 'vitest';
import { lookNear, near } from './nearSaturation.ts';
import { saturationPressure, saturationSlope } from './saturation.ts';

describe('the table that searches start by', () => {
  it('is within 5e-6 of the formula, in slope within 1e-4, over ice and water and beside the step between them', () => {
    const beside = [-1e-6, 0, 0.0099, 0.01, 0.0101, 1.00999];
    const all = [...Array.from({ length: 6001 }, (_, i) => -99.98 + i * 0.04995), ...beside];
    for (const t of all) {
      expect(lookNear(t)).toBe(true);
      expect(Math.abs((near[0] ?? 0) / saturationPressure(t) - 1)).toBeLessThan(5e-6);
      expect(Math.abs((near[1] ?? 0) / (saturationPressure(t) * saturationSlope(t)) - 1)).toBeLessThan(1e-4);
    }
  });

  it('says where it does not reach', () => {
    for (const t of [-100, 200.02, Number.NaN, Number.POSITIVE_INFINITY]) expect(lookNear(t)).toBe(false);
  });
});
