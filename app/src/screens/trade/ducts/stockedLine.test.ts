import type { DuctShape } from '@kneewall/engine';
import { describe, expect, it } from 'vitest';
import { stockedLine } from './stockedLine.ts';

const areaOf = (s: DuctShape) => ('diameter' in s ? (Math.PI / 4) * s.diameter ** 2 : s.width * s.height);
const inch = 0.0254;

describe('the stocked sizes a section can be dragged through', () => {
  it.each<DuctShape>([
    { kind: 'flexible', diameter: 8 * inch },
    { kind: 'round', diameter: 0.19 },
    { kind: 'rectangular', width: 20 * inch, height: 12 * inch },
    { kind: 'board', width: 0.4, height: 0.123 },
  ])('rise, hold its own size, and end on both sides: %o', (shape) => {
    const { sizes, at } = stockedLine(shape);
    expect(sizes[at]).toBe(shape);
    const areas = sizes.map(areaOf);
    expect(areas).toEqual([...areas].sort((a, b) => a - b));
    expect(new Set(areas).size).toBe(areas.length);
    expect(sizes.length).toBeGreaterThan(3);
    expect(sizes.length).toBeLessThan(60);
  });

  it('are the same from any stocked one of them', () => {
    const { sizes } = stockedLine({ kind: 'flexible', diameter: 8 * inch });
    for (const [i, size] of sizes.entries()) {
      const again = stockedLine(size);
      expect(again.at).toBe(i);
      expect(again.sizes.map(areaOf).map((a) => a.toFixed(9))).toEqual(sizes.map(areaOf).map((a) => a.toFixed(9)));
    }
  });
});
