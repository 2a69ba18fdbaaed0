import { describe, expect, it } from 'vitest';
import { longestTurning } from '../../access/kernels/corner.ts';
import { chance } from './chance.ts';
import { clearance } from './clearance.kernel.ts';
import { corridor } from './corridor.ts';
import { badOutline, type Outline, obstaclesOf, type Piece, type Pose } from './obstacles.ts';
import { planPath, type Question } from './planPath.ts';
import { replay, sweep } from './replay.ts';

const square = (x: number, y: number, s: number): Outline => [
  [x, y],
  [x + s, y],
  [x + s, y + s],
  [x, y + s],
];
const inside = ([x, y]: readonly [number, number], { x: px, y: py, turn }: Pose, { a, b }: Piece): boolean => {
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  return Math.abs((x - px) * c + (y - py) * s) < a && Math.abs((y - py) * c - (x - px) * s) < b;
};

describe('a path through the plane', () => {
  it('agrees with the closed form of a square corner, a millimetre to either side', () => {
    const random = chance(7);
    let open = 0;
    for (let i = 0; i < 60; ) {
      const [a, b] = [0.6 + 0.9 * random(), 0.6 + 0.9 * random()];
      const width = Math.min(a, b) * (0.2 + 0.7 * random());
      const { length } = longestTurning(a, b, width);
      if (length < Math.max(a, b, width) + 0.01) continue;
      i++;
      for (const [by, expected] of [
        [-0.001, 'passes'],
        [0.001, 'blocked'],
      ] as const) {
        const piece = { a: (length + by) / 2, b: width / 2 };
        const question = corridor(a, b, piece);
        const found = planPath(question, piece);
        if (found.answer === 'unknown') open++;
        else expect([a, b, width, found.answer]).toEqual([a, b, width, expected]);
        if (found.answer === 'passes') expect(replay(question.obstacles, piece, found.path).clear).toBe(true);
      }
    }
    expect(open).toBeLessThanOrEqual(1);
  });

  it('says nothing where its effort is spent, rather than guess', () => {
    const piece = { a: (longestTurning(0.9, 1.2, 0.5).length - 1e-7) / 2, b: 0.25 };
    expect(planPath(corridor(0.9, 1.2, piece), piece, 12_000).answer).toBe('unknown');
  });

  it('a piece larger than the house does not pass', () => {
    const piece = { a: 40, b: 30 };
    const walls = [square(-21, -1, 1), square(1, -1, 1)];
    const question: Question = {
      obstacles: obstaclesOf(walls),
      bounds: { x0: -1, x1: 1, y0: -3, y1: 3 },
      start: { x: 0, y: -2, turn: 0 },
      goals: [{ x: 0, y: 2, turn: 0 }],
    };
    expect(planPath(question, piece).answer).toBe('blocked');
  });

  it('goes round half a turn where that is the only way', () => {
    // A slot as wide as the piece is thick: it stands level before and upright in it.
    const slabs: Outline[] = [
      [
        [-9, -0.4],
        [-0.2, -0.4],
        [-0.2, 0],
        [-9, 0],
      ],
      [
        [0.2, -0.4],
        [9, -0.4],
        [9, 0],
        [0.2, 0],
      ],
    ];
    const question: Question = {
      obstacles: obstaclesOf(slabs),
      bounds: { x0: -2, x1: 2, y0: -2, y1: 2 },
      start: { x: 0, y: -1.5, turn: 0 },
      goals: [{ x: 0, y: 1.5, turn: 0 }],
    };
    const piece = { a: 0.5, b: 0.195 };
    const found = planPath(question, piece);
    expect(found.answer).toBe('passes');
    expect(planPath(question, { a: 0.5, b: 0.2005 }).answer).toBe('blocked');
  });
});

describe('what certifies', () => {
  const obstacles = obstaclesOf([square(0, 0, 1), square(1.5, 0, 1)]);

  it('clearance has the sign that points say, over random poses', () => {
    const random = chance(3);
    for (let i = 0; i < 400; i++) {
      const pose = { x: 3.5 * random() - 0.5, y: 2 * random() - 0.5, turn: Math.PI * random() };
      const piece = { a: 0.05 + 0.5 * random(), b: 0.05 + 0.2 * random() };
      const gap = clearance(obstacles, pose.x, pose.y, Math.cos(pose.turn), Math.sin(pose.turn), piece.a, piece.b);
      let touches = false;
      for (let u = 0; u <= 60 && !touches; u++)
        for (let v = 0; v <= 60; v++) {
          const [x, y] = [u / 60, v / 60];
          if (inside([x, y], pose, piece) || inside([x + 1.5, y], pose, piece)) touches = true;
        }
      if (touches) expect(gap).toBeLessThan(0);
      else expect(gap).toBeGreaterThan(-0.02);
    }
  });

  it.each([
    ['through a wall between two free poses', [-1, 0.5, 0, 3.5, 0.5, 0]],
    ['turning where there is no room to', [1.25, 0.5, Math.PI / 2, 1.25, 0.5, Math.PI]],
    ['past a corner, by a hair', [-0.3, -0.09, 0, 1.25, -0.0999, 0]],
    ['half a turn at once', [1.25, 1.2, 0, 1.25, 1.2, Math.PI]],
  ])('a path that touches is refused: %s', (_, poses) => {
    expect(replay(obstacles, { a: 0.4, b: 0.1 }, Float64Array.from(poses)).clear).toBe(false);
  });

  it('a clear one is kept, with the clearance that it has', () => {
    const path = Float64Array.from([1.25, -1, Math.PI / 2, 1.25, 2, Math.PI / 2]);
    expect(replay(obstacles, { a: 0.4, b: 0.1 }, path)).toMatchObject({ clear: true, least: expect.closeTo(0.15, 9) });
    expect(sweep(obstacles, { a: 0.4, b: 0.2499999999 }, path, 0, 3)).toBeLessThan(0);
  });

  it('outlines that cross themselves or run the wrong way are located', () => {
    const bow: Outline = [
      [0, 0],
      [1, 1],
      [1, 0],
      [0, 1],
    ];
    const star = Array.from({ length: 5 }, (_, i): [number, number] => [
      Math.cos((4 * Math.PI * i) / 5),
      Math.sin((4 * Math.PI * i) / 5),
    ]);
    expect(badOutline([square(0, 0, 1), bow])).toMatchObject({ outline: 1 });
    expect(badOutline([star])).toMatchObject({ outline: 0, why: 'crossing' });
    expect(badOutline([[...square(0, 0, 1)].reverse()])).toMatchObject({ outline: 0, why: 'clockwise' });
    expect(
      badOutline([
        [
          [0, 0],
          [1, Number.NaN],
          [0, 1],
        ],
      ]),
    ).toMatchObject({ outline: 0, why: 'flat' });
    expect(badOutline([square(0, 0, 1)])).toBeUndefined();
  });
});
