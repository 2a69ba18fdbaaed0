import { type Outline, obstaclesOf, type Piece } from './obstacles.ts';
import type { Question } from './planPath.ts';

/** m that walls reach: beyond whatever a piece sees. */
const wall = 12;

/** Walls of a way `a` m wide that turns to the left, square, into one `b` m wide: it comes along x and goes on along y. */
export const corridorWalls = (a: number, b: number): Outline[] => [
  [
    [-wall, -wall],
    [wall, -wall],
    [wall, 0],
    [-wall, 0],
  ],
  [
    [0, -wall],
    [wall, -wall],
    [wall, wall],
    [0, wall],
  ],
  [
    [-wall, a],
    [-b, a],
    [-b, wall],
    [-wall, wall],
  ],
];

/** A piece round that corner: lengthwise before it and after it, so far off that it sees straight walls only. */
export function corridor(a: number, b: number, piece: Piece): Question {
  const far = 2 * Math.hypot(piece.a, piece.b) + 0.3;
  return {
    obstacles: obstaclesOf(corridorWalls(a, b)),
    bounds: { x0: -b - far, x1: 0, y0: 0, y1: a + far },
    start: { x: -b - far + 0.02, y: a / 2, turn: 0 },
    goals: [Math.PI / 2, 0].map((turn) => ({ x: -b / 2, y: a + far - 0.02, turn })),
  };
}
