import {
  areaOfFlat,
  bendAllowance,
  coneArcs,
  type FlatLine,
  type FlatPiece,
  metalCap,
  type Spot,
  unfoldCone,
  unfoldTransition,
} from '@kneewall/engine/physics';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const metal = { thickness: 0.00055, radius: 0.0008, neutral: 0.33 };
const m = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const apart = (a: Spot, b: Spot): number => Math.hypot(b[0] - a[0], b[1] - a[1]);
const run = { seed: 20261128, numRuns: 60 };

/** m from a spot to the line through a bend. */
function off({ from, to }: FlatLine, [x, y]: Spot): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  return Math.abs(dx * (y - from[1]) - dy * (x - from[0])) / Math.hypot(dx, dy);
}

/**
 * Inside of two walls bent up along parallel lines: on the flat the lines lie a half arc beyond where each bend begins, and a bend
 * begins its inside radius short of the inner face of the wall.
 */
const insideOf = (between: number): number => between - bendAllowance({ ...metal, angle: 90 }) + 2 * metal.radius;
/** Depth of a flange outside: what lies beyond its line, less half the arc, with radius and thickness of the corner. */
const deepOf = (beyond: number): number =>
  beyond - bendAllowance({ ...metal, angle: 90 }) / 2 + metal.radius + metal.thickness;

describe('a cap of sheet metal, folded again by its lines alone', () => {
  it('is inside what a rectangular duct is outside, its flanges as deep as asked for, its corners cut out square', () => {
    fc.assert(
      fc.property(m(0.1, 0.8), m(0.1, 0.5), m(0.01, 0.05), (width, height, flange) => {
        const { piece } = metalCap({ id: 'c', over: { kind: 'rectangle', width, height }, flange, tabs: 4, ...metal });
        const [bottom, right, top, left] = piece?.lines ?? [];
        if (!piece || !bottom || !right || !top || !left) throw new Error('four bends');
        expect(insideOf(off(left, right.from))).toBeCloseTo(width, 9);
        expect(insideOf(off(bottom, top.from))).toBeCloseTo(height, 9);
        const edges = [
          [0, 0],
          [piece.size.width, 0],
          [0, piece.size.height],
        ] as const;
        expect(deepOf(off(bottom, edges[0]))).toBeCloseTo(flange, 9);
        expect(deepOf(off(left, edges[2]))).toBeCloseTo(flange, 9);
        expect(deepOf(off(right, edges[1]))).toBeCloseTo(flange, 9);
        // Twelve corners; what is missing of the rectangle are four squares.
        const cut = off(bottom, edges[0]);
        expect(piece.outline).toHaveLength(12);
        expect(piece.size.width * piece.size.height - areaOfFlat(piece)).toBeCloseTo(4 * cut * cut, 9);
      }),
      run,
    );
  });

  it('of a round duct touches it at every tab, and no tab is wider than its side', () => {
    fc.assert(
      fc.property(m(0.1, 0.4), fc.integer({ min: 8, max: 24 }), (diameter, half) => {
        const tabs = 2 * half;
        const { piece } = metalCap({ id: 'c', over: { kind: 'round', diameter }, flange: 0.0254, tabs, ...metal });
        const bends = piece?.lines ?? [];
        expect(bends).toHaveLength(tabs);
        bends.slice(0, half).forEach((bend, i) => {
          const across = bends[i + half];
          if (!across) throw new Error('a tab across');
          expect(insideOf(off(bend, across.from))).toBeCloseTo(diameter, 9);
          // Upright tabs stand side by side: their edges start where the bends meet, square to them.
          const [p, q, r] = [0, 1, 2].map((k) => piece?.outline[3 * i + k] ?? ([0, 0] as Spot)) as [Spot, Spot, Spot];
          expect(apart(q, r)).toBeCloseTo(apart(bend.from, bend.to), 9);
          expect(
            Math.abs((q[0] - p[0]) * (bend.to[0] - bend.from[0]) + (q[1] - p[1]) * (bend.to[1] - bend.from[1])),
          ).toBeLessThan(1e-12);
        });
      }),
      run,
    );
  });

  it('is refused with a flange too narrow to bend, and without its sizes', () => {
    const code = (over: { kind: 'round'; diameter: number }, flange: number) =>
      metalCap({ id: 'c', over, flange, tabs: 16, ...metal }).problems.map((p) => p.code);
    expect(code({ kind: 'round', diameter: 0.2 }, 0.001)).toEqual(['does-not-fit']);
    expect(code({ kind: 'round', diameter: 0 }, 0.02)).toEqual(['not-positive']);
  });
});

describe('a cone laid flat', () => {
  // A textbook's cone: 3, 4, 5. Large diameter 6, cut off half-way at 3: slope 2.5, arcs 5 and 2.5, angle 360 x 3 / 5.
  it('has the arcs of the textbook', () => {
    const arcs = coneArcs({ from: 6, to: 3, length: 2 });
    expect([arcs?.outer, arcs?.inner, arcs?.angle]).toEqual([
      expect.closeTo(5, 12),
      expect.closeTo(2.5, 12),
      expect.closeTo(216, 12),
    ]);
  });

  it('rolls up to the diameters and the length asked for, to 0.1 mm', () => {
    fc.assert(
      fc.property(m(0.1, 0.5), m(0.1, 0.5), m(0.08, 0.8), (from, to, length) => {
        const { piece } = unfoldCone({ id: 'c', from, to, length, seam: 0 });
        const rims = rimsOf(piece);
        const slope = apart(rims[0][0] ?? [0, 0], rims[1][0] ?? [0, 0]);
        // Around the tip where its edges meet; each rim is an arc there.
        const [large, small] = [Math.max(from, to), Math.min(from, to)];
        const half = (large - small) / 2;
        if (half < 1e-3) return;
        expect(Math.sqrt(slope ** 2 - half ** 2)).toBeCloseTo(length, 4);
        const angle = angleOf(rims);
        const reach = slope / (1 - small / large);
        expect(Math.abs((reach * angle) / Math.PI - large)).toBeLessThan(1e-4);
        expect(Math.abs(((reach - slope) * angle) / Math.PI - small)).toBeLessThan(1e-4);
      }),
      run,
    );
  });

  it('has the area of its slope, and that of its triangles', () => {
    const shape = { id: 'c', from: 0.3, to: 0.2, length: 0.5, seam: 0 };
    const area = Math.PI * 0.25 * Math.hypot(0.5, 0.05);
    const { piece } = unfoldCone(shape);
    const round = (diameter: number) => ({ kind: 'round' as const, diameter });
    const by = unfoldTransition({ ...shape, start: round(0.3), end: round(0.2), offset: [0, 0], parts: 90 }).piece;
    if (!piece || !by) throw new Error('both are flat');
    expect(areaOfFlat(piece) / area).toBeCloseTo(1, 3);
    expect(areaOfFlat(piece) / areaOfFlat(by)).toBeCloseTo(1, 3);
  });

  it('of equal ends is a pipe’s blank', () => {
    const { piece } = unfoldCone({ id: 'c', from: 0.2, to: 0.2, length: 0.5, seam: 0 });
    expect([piece?.size.width, piece?.size.height].sort()).toEqual([
      expect.closeTo(0.5, 9),
      expect.closeTo(Math.PI * 0.2, 9),
    ]);
  });
});

/** Its outer and its inner rim, from the first edge. */
function rimsOf(piece: FlatPiece | undefined): readonly [Spot[], Spot[]] {
  const all = [...(piece?.outline ?? [])];
  const n = all.length / 2;
  return [all.slice(0, n), all.slice(n).reverse()];
}

/** Radians between the first and the last edge. */
function angleOf([outer, inner]: readonly [Spot[], Spot[]]): number {
  const toward = (i: number) => {
    const [a, b] = [outer.at(i) ?? [0, 0], inner.at(i) ?? [0, 0]];
    return Math.atan2(b[1] - a[1], b[0] - a[0]);
  };
  return (toward(-1) - toward(0) + 4 * Math.PI) % (2 * Math.PI);
}
