import { describe, expect, it } from 'vitest';
import { inch } from '../../physics/exact.ts';
import { stockedNeighbours } from './neighbours.ts';
import { stockOf } from './stock.ts';

describe('the next stocked sizes', () => {
  it('of a round duct are those beside it, and none beyond the ends', () => {
    expect(stockedNeighbours({ kind: 'flexible', diameter: 7 * inch })).toEqual({
      smaller: { kind: 'flexible', diameter: 6 * inch },
      larger: { kind: 'flexible', diameter: 8 * inch },
    });
    expect(stockedNeighbours({ kind: 'round', diameter: 4 * inch }).smaller).toBeUndefined();
    expect(stockedNeighbours({ kind: 'round', diameter: 20 * inch }).larger).toBeUndefined();
  });

  it('of one between two sizes are those two', () => {
    expect(stockedNeighbours({ kind: 'round', diameter: 0.19 })).toMatchObject({
      smaller: { diameter: 7 * inch },
      larger: { diameter: 8 * inch },
    });
  });

  it('of a rectangular duct keep its height while they can', () => {
    const found = stockedNeighbours({ kind: 'rectangular', width: 16 * inch, height: 8 * inch });
    expect(found).toMatchObject({
      smaller: { width: 14 * inch, height: 8 * inch },
      larger: { width: 18 * inch, height: 8 * inch },
    });
  });

  it('are always smaller and larger in cross-section', () => {
    for (const shape of [...stockOf('rectangular'), ...stockOf('board')]) {
      if ('diameter' in shape) continue;
      const { smaller, larger } = stockedNeighbours(shape);
      const area = shape.width * shape.height;
      if (smaller && 'width' in smaller) expect(smaller.width * smaller.height).toBeLessThan(area);
      if (larger && 'width' in larger) expect(larger.width * larger.height).toBeGreaterThan(area);
    }
  });
});
