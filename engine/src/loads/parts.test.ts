import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { partShares, partTitle } from './parts.ts';
import type { LoadPart } from './result.ts';

describe('the parts of a load', () => {
  it('keep the sum and have shares that make one whole', () => {
    const names = Object.keys(partTitle) as LoadPart['part'][];
    const part = fc.record({ part: fc.constantFrom(...names), heat: fc.double({ min: 2, max: 5000, noNaN: true }) });
    fc.assert(
      fc.property(fc.array(part, { minLength: 1 }), (parts) => {
        const shares = partShares(parts);
        const sum = (list: readonly { heat: number }[]) => list.reduce((n, p) => n + p.heat, 0);
        const whole = shares.reduce((n, p) => n + p.share, 0);
        return Math.abs(sum(shares) - sum(parts)) < 1e-6 * sum(parts) && Math.abs(whole - 1) < 1e-9;
      }),
      { seed: 3 },
    );
  });
  it('are none where nothing is known', () => expect(partShares([])).toEqual([]));
});
