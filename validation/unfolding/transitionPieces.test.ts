import {
  areaOfFlat,
  type BoardTransition,
  bendAllowance,
  boardTransition,
  type FlatPiece,
  type MetalTransition,
  metalTransition,
  type Spot,
} from '@kneewall/engine/physics';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';

const rectangle = (width: number, height: number) => ({ kind: 'rectangle' as const, width, height });
const metal = { thickness: 0.00055, radius: 0.0008, neutral: 0.33, seam: 0.0254, parts: 6 };

const m = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const transition = fc.record({
  id: fc.constant('t'),
  start: fc.tuple(m(0.15, 0.9), m(0.1, 0.4)).map(([w, h]) => rectangle(w, h)),
  end: fc.tuple(m(0.15, 0.9), m(0.1, 0.4)).map(([w, h]) => rectangle(w, h)),
  length: m(0.1, 0.6),
  offset: fc.tuple(m(-0.2, 0.2), m(-0.1, 0.1)),
});

/** A side as it is measured off its flat piece: its inside corners at the start and at the end. */
type Measured = { readonly start: readonly [Spot, Spot]; readonly end: readonly [Spot, Spot] };
const apart = ([a, b]: readonly [Spot, Spot]): number => Math.hypot(b[0] - a[0], b[1] - a[1]);

/** What one side says of itself: widths, length up its slope, how far its end's middle lies aside of its start's. */
function told({ start, end }: Measured) {
  const [s0, s1] = start;
  const width = apart(start);
  const [c, s] = [(s1[0] - s0[0]) / width, (s1[1] - s0[1]) / width];
  const local = ([x, y]: Spot) => [(x - s0[0]) * c + (y - s0[1]) * s, (y - s0[1]) * c - (x - s0[0]) * s] as const;
  const [e0, e1] = end.map(local);
  return {
    width,
    endWidth: apart(end),
    slope: e0?.[1] ?? 0,
    square: (e1?.[1] ?? 0) - (e0?.[1] ?? 0),
    aside: ((e0?.[0] ?? 0) + (e1?.[0] ?? 0)) / 2 - width / 2,
  };
}

/** The most by which the four sides folded together miss what was asked for, m; `taken` is what bends add to a flat side. */
function missOf(
  sides: readonly Measured[],
  t: Pick<BoardTransition, 'start' | 'end' | 'length' | 'offset'>,
  taken = 0,
) {
  const [from, to] = [t.start, t.end];
  if (from.kind === 'round' || to.kind === 'round') throw new Error('rectangles');
  const [top, left, bottom, right] = sides.map(told);
  if (!top || !left || !bottom || !right) throw new Error('four sides');
  // Looking along it from within: along the top one goes left, down the left, right along the bottom, up the right.
  const offset = [bottom.aside, right.aside] as const;
  const high = (to.height - from.height) / 2;
  const wide = (to.width - from.width) / 2;
  const lengths = [
    [top, high + offset[1]],
    [bottom, high - offset[1]],
    [right, wide + offset[0]],
    [left, wide - offset[0]],
  ] as const;
  const misses = [
    ...[top, bottom].flatMap((x) => [x.width + taken - from.width, x.endWidth + taken - to.width]),
    ...[left, right].flatMap((x) => [x.width + taken - from.height, x.endWidth + taken - to.height]),
    ...lengths.map(([x, lean]) => Math.sqrt(x.slope ** 2 - lean ** 2) - t.length),
    top.aside + offset[0],
    left.aside + offset[1],
    offset[0] - t.offset[0],
    offset[1] - t.offset[1],
    ...[top, left, bottom, right].map((x) => x.square),
  ];
  return Math.max(...misses.map(Math.abs));
}

/** Inside corners of a side of board, by its laps. */
const ofBoard = ({ lines: [l, r] }: FlatPiece): Measured => {
  if (!l || !r) throw new Error('laps');
  return { start: [l.from, r.from], end: [l.to, r.to] };
};

/** Sides of metal, between the seam, the bends and the last edge: whichever piece they are in. */
function ofMetal(pieces: readonly FlatPiece[]): Measured[] {
  return pieces.flatMap(({ lines, outline }) => {
    const edges = lines.map((l) => [l.from, l.to] as const);
    const n = edges.length;
    const last = [outline[n], outline[n + 1]] as const;
    if (!last[0] || !last[1]) throw new Error('a last edge');
    const all = [...edges, [last[0], last[1]] as const];
    return all.slice(0, -1).map(([s, e], i): Measured => {
      const [s1, e1] = all[i + 1] ?? [s, e];
      return { start: [s, s1], end: [e, e1] };
    });
  });
}

/** Whether two edges of an outline that are no neighbours cross. */
function crosses(outline: readonly Spot[]): boolean {
  const edges = outline.map((p, i) => [p, outline[(i + 1) % outline.length] ?? p] as const);
  const turn = (a: Spot, b: Spot, c: Spot) => Math.sign((b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]));
  return edges.some(([a, b], i) =>
    edges.some(([c, d], k) => {
      if (k <= i + 1 || (i === 0 && k === edges.length - 1)) return false;
      return turn(a, b, c) * turn(a, b, d) < 0 && turn(c, d, a) * turn(c, d, b) < 0;
    }),
  );
}

describe('the piece between unit and box, flat and folded again', () => {
  it('of board: its inside sizes at both ends, its length and its offset come back within a tenth of a millimetre', () => {
    fc.assert(
      fc.property(transition, fc.constantFrom(0.0254, 0.0381, 0.0508), (t, thickness) => {
        const { pieces, problems } = boardTransition({ ...t, thickness, sheet: { width: 3.048, height: 1.2192 } });
        expect(problems).toEqual([]);
        expect(missOf(pieces.map(ofBoard), t)).toBeLessThan(1e-4);
        for (const p of pieces) expect(crosses(p.outline)).toBe(false);
      }),
      { seed: 11, numRuns: 200 },
    );
  });

  it('of metal: the same, where every bend takes its arc of the neutral line', () => {
    // A side between two bends: its straight part, and the inside radius at either end.
    fc.assert(
      fc.property(transition, fc.constantFrom(0.00055, 0.002), (t, thickness) => {
        const arc = bendAllowance({ ...metal, thickness, angle: 90 });
        const taken = 2 * metal.radius - arc;
        const made: MetalTransition = { ...t, ...metal, thickness, sheet: { width: 2.4384, height: 1.2192 } };
        const { pieces, problems } = metalTransition(made);
        if (problems.length > 0) return;
        expect(missOf(ofMetal(pieces), t, taken)).toBeLessThan(1e-4);
        for (const p of pieces) {
          expect(crosses(p.outline)).toBe(false);
          expect(Math.min(p.size.width, p.size.height)).toBeLessThanOrEqual(1.2192 + 1e-9);
          expect(Math.max(p.size.width, p.size.height)).toBeLessThanOrEqual(2.4384 + 1e-9);
        }
      }),
      { seed: 12, numRuns: 200 },
    );
  });

  it('of metal to a round duct: one piece with the area of its triangles, or none', () => {
    const t: MetalTransition = {
      id: 't',
      start: rectangle(0.4, 0.25),
      end: { kind: 'round', diameter: 0.25 },
      length: 0.25,
      offset: [0.05, 0],
      ...metal,
      sheet: { width: 2.4384, height: 1.2192 },
    };
    const [piece] = metalTransition(t).pieces;
    const bare = metalTransition({ ...t, seam: 0 }).pieces[0];
    if (!piece || !bare) throw new Error('a piece');
    // A prism of the mean girth is near; the seam is a strip as long as the first edge, at the most a sloping one.
    expect(areaOfFlat(bare)).toBeGreaterThan(0.5 * (1.3 + Math.PI * 0.25) * 0.25);
    expect(areaOfFlat(piece)).toBeGreaterThan(areaOfFlat(bare));
    expect(crosses(piece.outline)).toBe(false);
    expect(metalTransition({ ...t, sheet: { width: 0.5, height: 0.5 } }).problems[0]?.code).toBe('larger-than-stock');
  });
});
