import { expect, it } from 'vitest';
import { suddenExpansion, transitionLoss } from './index.ts';

type End = Parameters<typeof transitionLoss>[0]['from'];
const box = (width: number, height: number): End => ({ kind: 'rectangle', width, height });
const round = (diameter: number): End => ({ kind: 'round', diameter });
const between = (from: End, to: End, length: number, offset: [number, number] = [0, 0]) =>
  transitionLoss({ from, to, length, offset });
const [small, large] = [box(0.4, 0.2), box(0.5, 0.32)];

it('of equal ends in line loses friction alone, as a straight duct of that length', () => {
  const { loss, friction, area } = between(small, small, 0.3);
  expect(loss).toBe(friction);
  // 0.02 L / D, D the side of a square of that area.
  expect([friction, area]).toEqual([expect.closeTo((0.02 * 0.3) / Math.sqrt(0.08), 12), expect.closeTo(0.08, 12)]);
});

it('of no length is the sudden change: Borda and Carnot widening, half of the missing area narrowing', () => {
  for (const [a, b] of [
    [small, large],
    [small, box(0.4, 0.4)],
    [round(0.2), round(0.4)],
  ] as const) {
    const ratio = between(a, a, 0).area / between(b, b, 0).area;
    expect(between(a, b, 0).loss).toBeCloseTo((1 - ratio) ** 2, 12);
    // The straight form 0.5 (1 - ratio) that textbooks print lies within 0.06 of the power 3/4 that is used.
    expect(Math.abs(between(b, a, 0).loss - 0.5 * (1 - ratio))).toBeLessThan(0.06);
  }
});

it('of great length loses nothing but friction, and the more the steeper it is', () => {
  for (const [a, b] of [
    [small, large],
    [large, small],
    [box(0.66, 0.25), box(0.5, 0.3)],
    [box(0.4, 0.4), round(0.4)],
    [round(0.3), box(0.5, 0.2)],
  ] as const) {
    const shape = [5, 3, 1, 0.6, 0.4, 0.3, 0.2, 0.1, 0.05, 0].map((length) => {
      const { narrowing, widening } = between(a, b, length);
      return narrowing + widening;
    });
    expect(shape).toEqual([...shape].sort((x, y) => x - y));
    expect(shape[0]).toBeLessThan(0.02);
    const aside = [0, 0.05, 0.1, 0.2].map((off) => between(a, b, 0.3, [off, 0]).loss);
    expect(aside).toEqual([...aside].sort((x, y) => x - y));
  }
});

it('leading aside between equal ends is two mitred turns of its angle', () => {
  // 30 degrees in a mitre as high as wide: 0.16.
  const { turning, narrowing, widening } = between(small, small, 0.3, [0.3 * Math.tan(Math.PI / 6), 0]);
  expect([turning, narrowing, widening]).toEqual([expect.closeTo(0.32, 9), 0, 0]);
});

it('never widens for more than Borda and Carnot, nor gives pressure back', () => {
  for (const length of [0, 0.1, 0.3, 1])
    for (const to of [large, box(0.9, 0.2), round(0.6)]) {
      const { area, widening, narrowing } = between(small, to, length);
      const wide = to.kind === 'round' ? (Math.PI * to.diameter ** 2) / 4 : to.width * to.height;
      expect(widening).toBeLessThanOrEqual(suddenExpansion(area / wide) + 1e-12);
      expect(Math.min(widening, narrowing)).toBeGreaterThanOrEqual(0);
    }
});

it('two ends that cross have in common what one cuts out of the other', () => {
  // A circle of 0.4 through a slot of 0.5 by 0.2: by the segments cut off above and below.
  const [r, y] = [0.2, 0.1];
  const segment = r * r * Math.acos(y / r) - y * Math.sqrt(r * r - y * y);
  expect(between(round(0.4), box(0.5, 0.2), 0.3).area).toBeCloseTo(Math.PI * r * r - 2 * segment, 12);
});
