import { describe, expect, it } from 'vitest';
import {
  firstOrderIndices,
  percentiles,
  primitivePolynomials,
  rightMoreOften,
  sobolPoints,
  triangular,
} from './index.ts';

describe('Sobol points', () => {
  it('fill every interval of each dimension once', () => {
    const [dimensions, count] = [60, 256];
    const points = sobolPoints(dimensions, count, 3);
    for (let d = 0; d < dimensions; d++) {
      const seen = new Set(
        Array.from({ length: count }, (_, i) => Math.floor((points[i * dimensions + d] ?? 0) * count)),
      );
      expect(seen.size).toBe(count);
    }
    expect(points.every((x) => x > 0 && x < 1)).toBe(true);
  });

  it('are the same for the same seed, and others for another', () => {
    expect(sobolPoints(5, 64, 1)).toEqual(sobolPoints(5, 64, 1));
    expect(sobolPoints(5, 64, 1)).not.toEqual(sobolPoints(5, 64, 2));
  });

  it('let no two of many inputs move together', () => {
    const [dimensions, count] = [70, 1024];
    const points = sobolPoints(dimensions, count, 1);
    const column = (d: number) =>
      Float64Array.from({ length: count }, (_, i) => (points[i * dimensions + d] ?? 0) - 0.5);
    const columns = Array.from({ length: dimensions }, (_, d) => column(d));
    let worst = 0;
    for (let a = 0; a < dimensions; a++)
      for (let b = 0; b < a; b++) {
        const tie = (columns[a] ?? column(a)).reduce((sum, x, i) => sum + x * (columns[b]?.[i] ?? 0), 0) / (count / 12);
        worst = Math.max(worst, Math.abs(tie));
      }
    expect(worst).toBeLessThan(0.12);
  });

  // Tables of primitive polynomials over two elements (Lidl & Niederreiter): x+1, x²+x+1, x³+x+1, x³+x²+1, x⁴+x+1, x⁴+x³+1.
  it('use the primitive polynomials', () => {
    expect(primitivePolynomials(6)).toEqual([0b11, 0b111, 0b1011, 0b1101, 0b10011, 0b11001]);
    // phi(2^n - 1)/n of each degree: 1, 1, 2, 2, 6, 6, 18.
    expect(primitivePolynomials(36).filter((p) => p >= 128 && p < 256).length).toBe(18);
  });

  it('integrate a product far better than chance does', () => {
    const [dimensions, count] = [6, 1024];
    const errors = Array.from({ length: 8 }, (_, seed) => {
      const points = sobolPoints(dimensions, count, seed);
      let sum = 0;
      for (let i = 0; i < count; i++) {
        let product = 1;
        for (let d = 0; d < dimensions; d++) product *= 1 + 0.5 * ((points[i * dimensions + d] ?? 0) - 0.5);
        sum += product;
      }
      return Math.abs(sum / count - 1);
    });
    // By chance the spread would be sqrt((1 + 1/48)^6 - 1) / 32 = 0.0114.
    expect(Math.max(...errors)).toBeLessThan(0.0114 / 4);
  });
});

describe('ranges and shares', () => {
  it('a triangular range has its ends, its peak and its mean', () => {
    const range = { low: 1, likely: 2, high: 6 };
    expect(triangular(0, range)).toBe(1);
    expect(triangular(1, range)).toBe(6);
    expect(triangular(0.2, range)).toBeCloseTo(2, 12);
    const mean =
      Array.from({ length: 4000 }, (_, i) => triangular((i + 0.5) / 4000, range)).reduce((a, b) => a + b) / 4000;
    expect(mean).toBeCloseTo(3, 3);
    expect(triangular(0.3, { low: 4, likely: 4, high: 4 })).toBe(4);
    expect(triangular(0.5, { low: 0, likely: 0, high: 2 })).toBeCloseTo(2 - Math.SQRT2, 12);
  });

  // Hyndman & Fan 1996, type 7.
  it('percentiles lie on lines between the members', () => {
    expect(percentiles([3, 1, 2, 4], [0, 0.5, 1])).toEqual([1, 2.5, 4]);
    expect(percentiles([1, 2, 3, 4, 5], [0.1])[0]).toBeCloseTo(1.4, 12);
  });

  it('an input without effect, and an output that is constant, come out at nought', () => {
    const samples = sobolPoints(3, 1024, 5);
    const constant = new Float64Array(1024).fill(7);
    expect(firstOrderIndices(samples, constant, 3)).toEqual([0, 0, 0]);
    const first = Float64Array.from({ length: 1024 }, (_, i) => samples[i * 3] ?? 0);
    const [x = 0, y = 0, z = 0] = firstOrderIndices(samples, first, 3);
    expect(x).toBeGreaterThan(0.98);
    expect(Math.max(y, z)).toBeLessThan(0.02);
  });

  it('knowing the input that decides makes the purchase right as much more often as it was wrong', () => {
    const samples = sobolPoints(2, 1200, 5);
    const choices = Float64Array.from({ length: 1200 }, (_, i) => ((samples[i * 2] ?? 0) > 0.75 ? 1 : 0));
    const [first = 0, second = 0] = rightMoreOften(samples, choices, 2);
    expect(first).toBeCloseTo(0.25, 2);
    expect(second).toBe(0);
  });
});
