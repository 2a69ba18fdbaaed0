import type { Range } from '@kneewall/project';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jointRange } from './jointRange.ts';

const width = (r: Range) => r.high - r.low;
/** A symmetric range whose triangle reaches from 0 to 2: 2.5 % lie beyond √0.05 of either side. */
const tail = Math.sqrt(0.05);
const unit: Range = { low: tail, likely: 1, high: 2 - tail };
const moved = (r: Range, by: number): Range => ({ low: r.low + by, likely: r.likely + by, high: r.high + by });

describe('two statements about one number', () => {
  it('that are the same narrow it about the same peak, as the square of a triangle has it', () => {
    const { overlap, range } = jointRange(unit, unit);
    expect(overlap).toBeCloseTo(1, 4);
    // The square of a rising side leaves 2.5 % below the cube root of 0.05 of it (closed form).
    const end = 0.05 ** (1 / 3);
    expect(range?.low).toBeCloseTo(end, 3);
    expect(range?.likely).toBe(1);
    expect(range?.high).toBeCloseTo(2 - end, 3);
  });

  it('that lean on each other have the peak of a parabola between them, and its ends', () => {
    // Triangles from -1 to 1 and from 0 to 2 cover 0 to 1 together, where the product is x (1 - x): 3x² - 2x³ below x.
    const { range } = jointRange(moved(unit, -1), unit);
    expect(range?.likely).toBeCloseTo(0.5, 12);
    const below = (x: number) => 3 * x ** 2 - 2 * x ** 3;
    expect(below(range?.low ?? 0)).toBeCloseTo(0.025, 3);
    expect(below(range?.high ?? 0)).toBeCloseTo(0.975, 3);
  });

  it('overlap by the cube of what they share, where equal ones are moved apart (closed form)', () => {
    // Two sides of unit slope over a stretch d: d³ / 6, against 2/3 for a triangle with itself.
    for (const d of [0.9, 0.5, 0.2])
      expect(jointRange(unit, moved(unit, 2 - d)).overlap).toBeCloseTo(d ** 3 / 6 / (2 / 3), 5);
    expect(jointRange(unit, moved(unit, 2)).overlap).toBe(0);
    expect(jointRange(unit, moved(unit, 9))).toEqual({ overlap: 0 });
  });

  it('leave the narrow one as it is where the other says nothing', () => {
    const wide = { low: -1000, likely: 1, high: 1000 };
    const { overlap, range } = jointRange(unit, wide);
    expect(overlap).toBeGreaterThan(1);
    expect(range?.low).toBeCloseTo(unit.low, 2);
    expect(range?.likely).toBe(1);
    expect(range?.high).toBeCloseTo(unit.high, 2);
  });

  it('take a certain number as it is where the other holds it possible', () => {
    const sure = { low: 1.2, likely: 1.2, high: 1.2 };
    expect(jointRange(sure, unit).range).toEqual(sure);
    expect(jointRange(unit, sure).range).toEqual(sure);
    expect(jointRange(sure, moved(unit, 5))).toEqual({ overlap: 0 });
    expect(jointRange(sure, sure)).toEqual({ overlap: 1, range: sure });
    expect(jointRange(sure, moved(sure, 0.1))).toEqual({ overlap: 0 });
  });
});

describe('any two ranges', () => {
  const size = fc.double({ min: 0, max: 100, noNaN: true });
  const anyRange = fc
    .tuple(fc.double({ min: 0, max: 300, noNaN: true }), size, size)
    .map(([low, up, more]) => ({ low, likely: low + up, high: low + up + more }))
    .filter((r) => r.high - r.low > 1e-3);
  const eachPair = (check: (a: Range, b: Range) => void) =>
    fc.assert(fc.property(anyRange, anyRange, check), { seed: 20261125, numRuns: 2000 });

  it('joined are ordered, within both taken together, and never wider than the narrower', () => {
    let joined = 0;
    eachPair((a, b) => {
      const { overlap, range } = jointRange(a, b);
      if (!range || overlap < 0.05) return;
      joined++;
      const narrower = Math.min(width(a), width(b));
      expect(range.low).toBeLessThanOrEqual(range.likely);
      expect(range.likely).toBeLessThanOrEqual(range.high);
      // The grid's own step is the only slack.
      expect(range.low).toBeGreaterThanOrEqual(Math.min(a.low, b.low) - narrower / 512);
      expect(range.high).toBeLessThanOrEqual(Math.max(a.high, b.high) + narrower / 512);
      expect(width(range)).toBeLessThanOrEqual(narrower * (1 + 1e-12));
    });
    expect(joined).toBeGreaterThan(200);
  });

  it('say the same whichever speaks first', () => {
    eachPair((a, b) => {
      const [ab, ba] = [jointRange(a, b), jointRange(b, a)];
      expect(ab.overlap).toBeCloseTo(ba.overlap, 9);
      expect(ab.range?.likely).toBe(ba.range?.likely);
    });
  });
});
