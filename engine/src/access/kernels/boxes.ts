import { faceSpare, type Through } from './rectangle.ts';

/** A box, m: width, depth and height as it will stand. */
export type Box = { readonly width: number; readonly depth: number; readonly height: number };
/** Which side of the box leads: that much of it lies behind the face that goes through. */
export type Leading = keyof Box;
export const sides: readonly Leading[] = ['width', 'depth', 'height'];

/** A box in one pose at an opening. */
export type Pose = {
  readonly leading: Leading;
  /** m behind the face. */
  readonly length: number;
  readonly face: readonly [number, number];
  readonly through: Through;
  /** m left over, below 0 where it does not go. */
  readonly spare: number;
};

/** The three ways in which a box can go through a rectangular opening by a face, the roomiest first. Source: `access.rectangle`. */
export function posesThrough(box: Box, opening: readonly [number, number]): Pose[] {
  const poses = sides.map((leading): Pose => {
    const [p = 0, q = 0] = sides.filter((s) => s !== leading).map((s) => box[s]);
    return { leading, length: box[leading], face: [p, q], ...faceSpare([p, q], opening) };
  });
  return poses.sort((x, y) => y.spare - x.spare);
}

/**
 * Whether no motion whatever takes the box through: the cut that halves the box lies in the opening at some moment, and holds
 * an ellipse at least as large as the box's two smaller sides. Where this does not hold nothing is proved. Source: `access.never`.
 */
export function neverThrough(box: Box, opening: readonly [number, number]): boolean {
  const [a = 0, b = 0] = sides.map((s) => box[s]).sort((x, y) => x - y);
  return a > Math.min(...opening) || a * a + b * b > opening[0] ** 2 + opening[1] ** 2;
}

/** The smallest opening that a box goes through square to it with `spare` m on every side: its smallest face. */
export function smallestOpening(box: Box, spare: number): readonly [number, number] {
  const [a = 0, b = 0] = sides.map((s) => box[s]).sort((x, y) => x - y);
  return [b + 2 * spare, a + 2 * spare];
}
