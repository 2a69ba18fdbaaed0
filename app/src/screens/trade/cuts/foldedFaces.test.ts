import { describe, expect, it } from 'vitest';
import { type FoldedBox, foldedFaces } from './foldedFaces.ts';

const box = {
  id: 'b',
  width: 0.5,
  height: 0.3,
  length: 1.2,
  thickness: 0.025,
  caps: { start: false, end: true },
  openings: [
    { id: 'left hole', side: 'left', along: 0.3, across: 0.1, shape: { kind: 'round', diameter: 0.2 } },
    { id: 'end hole', side: 'end', along: 0.15, across: 0.4, shape: { kind: 'round', diameter: 0.2 } },
  ],
} as const;
const folded = {
  box,
  flat: { outside: { width: 0.55, height: 0.35, length: 1.225 } },
} as unknown as FoldedBox;
const sides = (turn: number, tilt: number) =>
  foldedFaces(folded, turn, tilt).map((f) => (f.inside ? `within ${f.side}` : f.side));

describe('a folded box', () => {
  it('shows the faces that look at the viewer, and no open end', () => {
    expect(sides(30, 25)).toEqual(['within right', 'within bottom', 'within end', 'left', 'top']);
    expect(sides(-30, 25)).toEqual(['within left', 'within bottom', 'within end', 'right', 'top']);
    expect(sides(30, -25)).toEqual(['within right', 'within top', 'within end', 'left', 'bottom']);
    // From behind its cap.
    expect(sides(150, 25)).toEqual(['left', 'top', 'end']);
    // Straight in at the open end: its cap alone, from within.
    expect(sides(0, 0)).toEqual(['within end']);
  });

  it('has its holes where they were asked for', () => {
    // Looked at square on: seen from the left the near end is at the right of the picture.
    const [left] = foldedFaces(folded, 90, 0).filter((f) => !f.inside);
    expect(left?.side).toBe('left');
    const xs = left?.corners.map((c) => c[0]) ?? [];
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(122.5, 9);
    const [hole] = left?.holes ?? [];
    expect(61.25 - (hole?.middle[0] ?? 0)).toBeCloseTo(30, 9);
    // 100 mm above the bottom’s inside, the middle of the height being 150 mm above it.
    expect(hole?.middle[1]).toBeCloseTo(5, 9);
    const end = foldedFaces(folded, 180, 0).find((f) => f.side === 'end');
    // Looked back at from beyond the far end, right and left are changed over.
    expect(end?.holes[0]?.middle[0]).toBeCloseTo(-15, 9);
  });
});
