import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { tangentsOf } from '../../physics/power/index.ts';
import { alternatingFrom } from '../../physics/power/inverter.ts';
import { powerFor } from '../season/unitPower.ts';
import { fitHouse } from './fitHouse.ts';
import { unitHull } from './unitHull.ts';

const along = (pieces: readonly { readonly width: number; readonly slope: number }[], x: number): number => {
  let [left, sum] = [x, 0];
  for (const { width, slope } of pieces) {
    sum += Math.min(left, width) * slope;
    left -= Math.min(left, width);
  }
  return sum;
};

describe('what a bound is made of', () => {
  it('takes from the inverter never less than it gives, and hardly more', () => {
    const own = { most: 6000, nominal: 0.93, idle: 55 };
    const pieces = tangentsOf(own);
    for (let x = 0; x <= 6000 / 0.93; x += 50) {
      const [above, truth] = [along(pieces, x), alternatingFrom(x, own)];
      expect(above).toBeGreaterThanOrEqual(truth - 1e-9);
      expect(above).toBeLessThanOrEqual(1.005 * truth + 1e-9);
    }
  });

  it('takes for heat never more than the unit draws, along a line that rises', () => {
    const speed = fc.double({ min: 200, max: 4000, noNaN: true });
    fc.assert(
      fc.property(fc.array(fc.tuple(speed, speed), { minLength: 1, maxLength: 3 }), (steps) => {
        let capacity = 0;
        const moment = steps.map(([more, power]) => {
          capacity += more;
          return { capacity, power };
        });
        const pieces = unitHull(moment, 0);
        for (const [i, p] of pieces.entries()) expect(p.slope).toBeGreaterThanOrEqual(pieces[i - 1]?.slope ?? p.slope);
        for (let i = 1; i <= 20; i++) {
          const heat = (capacity * i) / 20;
          expect(1000 * along(pieces, heat / 1000)).toBeLessThanOrEqual(powerFor(moment, heat) + 1e-6);
        }
      }),
      { seed: 5 },
    );
  });

  it('finds the house again that a year was made from', () => {
    const heat = Float64Array.from({ length: 2000 }, (_, i) => Math.sin(i / 3) + Math.cos(i / 41));
    let mass = 0;
    const left = Math.exp(-1 / (2 * 1.1 ** 15));
    const room = heat.map((q) => {
      mass = left * mass + 0.3 * q;
      return mass + 0.2 * q;
    });
    const found = fitHouse(heat, room, () => true);
    expect(found.atOnce).toBeCloseTo(0.2, 6);
    expect(found.gain).toBeCloseTo(0.3, 6);
    expect(found.left).toBeCloseTo(left, 9);
    expect(found.missed).toBeLessThan(1e-6);
  });
});
