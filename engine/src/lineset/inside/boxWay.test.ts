import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Block, bendSpare, type Point, wayAmong } from './boxWay.ts';

const found = (from: Point, to: Point, spaces: readonly Block[], things: readonly Block[]) => {
  const way = wayAmong(from, to, spaces, things);
  if (way === 'too-many') throw new Error('too many boxes');
  return way;
};
const block = (x: number, y: number, z: number, w: number, d: number, h: number): Block => ({
  low: [x, y, z],
  high: [x + w, y + d, z + h],
});
const apart = (a: Point, b: Point): number => a.reduce((sum, v, i) => sum + Math.abs(v - (b[i] ?? v)), 0);

describe('ways by hand', () => {
  it('with nothing in it is as long as across, up and high together, with no more bends than axes ask', () => {
    fc.assert(
      fc.property(fc.tuple(whole(), whole(), whole()), fc.tuple(whole(), whole(), whole()), (a, b) => {
        const way = found(a, b, [], []);
        expect(way?.length).toBeCloseTo(apart(a, b), 9);
        expect(way?.bends).toBe(Math.max(0, a.filter((v, i) => v !== b[i]).length - 1));
      }),
    );
  });

  it('goes round a chimney from floor to roof by its nearer side', () => {
    // From (0, 1) to (4, 1); the chimney stands from 0.6 to 1.7 up the plan: its near side is 0.4 away, its far one 0.7.
    const attic = block(0, 0, 3, 6, 4, 2);
    const chimney = block(2, 0.6, 2, 0.8, 1.1, 4);
    const way = found([0, 1, 3.5], [4, 1, 3.5], [attic], [chimney]);
    expect(way?.length).toBeCloseTo(4 + 2 * 0.4, 9);
    // Aside at once, along, and back at the end.
    expect(way?.bends).toBe(2);
  });

  it('drops through a closet where the attic has no other way out', () => {
    const attic = block(0, 0, 3, 5, 4, 2);
    const closet = block(4, 0, 0, 1, 1, 3);
    const way = found([1, 3, 3.2], [5, 0.5, 0.5], [attic, closet], []);
    expect(way?.length).toBeCloseTo(4 + 2.5 + 2.7, 9);
    expect(found([1, 3, 3.2], [5, 0.5, 0.5], [attic], [])).toBeUndefined();
  });

  it('is walled off by what reaches from side to side, and by nothing less', () => {
    const attic = block(0, 0, 0, 4, 4, 2);
    const wall = (high: number) => [block(2, -1, -1, 0.5, 6, high)];
    expect(found([0, 1, 1], [4, 1, 1], [attic], wall(4))).toBeUndefined();
    expect(found([0, 1, 1], [4, 1, 1], [attic], wall(2.5))?.length).toBeCloseTo(4 + 2 * 0.5, 9);
  });
});

function whole() {
  return fc.integer({ min: 0, max: 9 });
}
const boxes = (most: number) =>
  fc.array(
    fc
      .tuple(
        whole(),
        whole(),
        whole(),
        fc.integer({ min: 1, max: 5 }),
        fc.integer({ min: 1, max: 5 }),
        fc.integer({ min: 1, max: 5 }),
      )
      .map(([x, y, z, w, d, h]) => block(x, y, z, w, d, h)),
    { maxLength: most },
  );

/** Steps of half a metre over every place of a fine lattice, in the order of their distance: knows nothing of crossings. */
function byLattice(from: Point, to: Point, room: Block, things: readonly Block[]): number | undefined {
  const free = (p: Point, q: Point): boolean => {
    const middle = p.map((v, i) => (v + (q[i] ?? v)) / 2);
    const holds = (b: Block, by: number) =>
      middle.every((v, i) => v > (b.low[i] ?? 0) - by && v < (b.high[i] ?? 0) + by);
    return holds(room, 1e-6) && !things.some((b) => holds(b, -1e-6));
  };
  const keyOf = (p: Point): string => p.join(' ');
  let edge: Point[] = [from];
  const seen = new Map([[keyOf(from), 0]]);
  for (let steps = 1; edge.length > 0; steps++) {
    const next: Point[] = [];
    for (const p of edge)
      for (const axis of [0, 1, 2])
        for (const by of [-0.5, 0.5]) {
          const q = p.map((v, i) => (i === axis ? v + by : v)) as unknown as Point;
          if (seen.has(keyOf(q)) || !free(p, q)) continue;
          seen.set(keyOf(q), steps);
          next.push(q);
        }
    edge = next;
  }
  const steps = seen.get(keyOf(to));
  return steps === undefined ? undefined : steps / 2;
}

it('is as short as a search of a fine lattice finds in space', () => {
  const room = block(0, 0, 0, 9, 9, 9);
  fc.assert(
    fc.property(fc.tuple(whole(), whole(), whole()), fc.tuple(whole(), whole(), whole()), boxes(5), (a, b, things) => {
      const lattice = byLattice(a, b, room, things);
      const way = found(a, b, [room], things);
      if (lattice === undefined) expect(way).toBeUndefined();
      else expect(way?.length).toBeCloseTo(lattice, 9);
    }),
    { numRuns: 40, seed: 7 },
  );
});

/** Every pair of corners that see each other, measured along level and upright: by brute force. */
function byVisibility(a: Point, b: Point, things: readonly Block[]): number | undefined {
  const corners = things.flatMap(({ low, high }) =>
    [low[0], high[0]].flatMap((x) => [low[1], high[1]].map((y): Point => [x, y, 0])),
  );
  const nodes = [a, b, ...corners];
  const best = nodes.map((_, i) => (i === 0 ? 0 : Number.POSITIVE_INFINITY));
  for (let round = 0; round < nodes.length; round++)
    nodes.forEach((p, i) => {
      nodes.forEach((q, j) => {
        const way = (best[i] ?? 0) + apart(p, q);
        if (way < (best[j] ?? 0) - 1e-12 && sees(p, q, things)) best[j] = way;
      });
    });
  return Number.isFinite(best[1]) ? best[1] : undefined;
}

/** Whether a straight line passes through no box's inside: its stretch within the box has no length. */
function sees(p: Point, q: Point, things: readonly Block[]): boolean {
  return things.every(({ low, high }) => {
    let [from, to] = [0, 1];
    for (const axis of [0, 1] as const) {
      const by = q[axis] - p[axis];
      const [first, last] = [low[axis] + 1e-9 - p[axis], high[axis] - 1e-9 - p[axis]];
      if (Math.abs(by) < 1e-12) {
        if (first >= 0 || last <= 0) return true;
        continue;
      }
      from = Math.max(from, Math.min(first / by, last / by));
      to = Math.min(to, Math.max(first / by, last / by));
    }
    return to <= from + 1e-9;
  });
}

it('is as short as the corners that see each other allow, in plan', () => {
  fc.assert(
    fc.property(fc.tuple(whole(), whole()), fc.tuple(whole(), whole()), boxes(6), ([ax, ay], [bx, by], drawn) => {
      const things = drawn.map((t) => block(t.low[0], t.low[1], -1, t.high[0] - t.low[0], t.high[1] - t.low[1], 2));
      const [a, b]: [Point, Point] = [
        [ax, ay, 0],
        [bx, by, 0],
      ];
      const flat = block(-20, -20, 0, 50, 50, 0);
      const buried = (p: Point) =>
        things.some(({ low, high }) => p[0] > low[0] && p[0] < high[0] && p[1] > low[1] && p[1] < high[1]);
      fc.pre(!buried(a) && !buried(b));
      const sight = byVisibility(a, b, things);
      const way = found(a, b, [flat], things);
      if (sight === undefined) expect(way).toBeUndefined();
      else expect(way?.length).toBeCloseTo(sight, 9);
    }),
    { numRuns: 150, seed: 11 },
  );
});

it('a stretch gives each bend at its ends one radius', () => {
  const points: Point[] = [
    [0, 0, 0],
    [0.2, 0, 0],
    [0.2, 0.35, 0],
    [2, 0.35, 0],
  ];
  expect(bendSpare(points, 0.15)).toBeCloseTo(0.05, 12);
  expect(bendSpare(points, 0.2)).toBeCloseTo(-0.05, 12);
  expect(bendSpare(points.slice(0, 2), 0.15)).toBe(Number.POSITIVE_INFINITY);
});

it('so many boxes that no house has them are refused, not waited for', () => {
  const many = Array.from({ length: 60 }, (_, i) => block(i * 1.01, i * 1.02, i * 1.03, 0.5, 0.5, 0.5));
  expect(wayAmong([0, 0, 0], [70, 70, 70], [], many)).toBe('too-many');
});
