import type { Outline, Piece, Question } from '../../physics/passage/index.ts';
import { obstaclesOf } from '../../physics/passage/index.ts';

/** What a picture shows: a hatch or a flight from the side, or a door, corner or way from above. */
export type View = 'hatch' | 'flight' | 'plan';

/** A passage in the plane: what stands in the way, and the question for a piece of any size. */
export type Scene = {
  readonly view: View;
  readonly outlines: readonly Outline[];
  /** m: total spare that no motion in this plane can exceed, for a piece with sides `a`, `b`; below 0 it is proved not to pass. */
  readonly bound: (piece: Piece) => number;
  readonly asked: (piece: Piece) => Question;
};

/** m that walls reach: beyond whatever a piece sees. */
export const far = 12;

export const box = (x0: number, y0: number, x1: number, y1: number): Outline => [
  [x0, y0],
  [x1, y0],
  [x1, y1],
  [x0, y1],
];

/** A scene whose outlines are laid out once for all sizes of the piece. */
export function sceneOf(
  view: View,
  outlines: readonly Outline[],
  bound: Scene['bound'],
  rest: (piece: Piece) => Omit<Question, 'obstacles'>,
): Scene {
  const obstacles = obstaclesOf(outlines);
  return { view, outlines, bound, asked: (piece) => ({ obstacles, ...rest(piece) }) };
}

/** m between a resting piece and what it rests on, so that it does not touch. */
export const hair = 0.003;
/** A piece's reach: half its diagonal. */
export const reachOf = ({ a, b }: Piece): number => Math.hypot(a, b);
/** The narrower side of a piece, whole. */
export const narrowOf = ({ a, b }: Piece): number => 2 * Math.min(a, b);
