import { describe, expect, it } from 'vitest';
import { type FoldedBox, foldedFaces } from './foldedFaces.ts';
import { type JointPiece, jointFaces } from './jointFaces.ts';

const rectangle = (width: number, height: number) => ({ kind: 'rectangle' as const, width, height });
const joint = (more: Partial<JointPiece['piece']>) =>
  ({
    piece: { start: rectangle(0.5, 0.3), end: rectangle(0.5, 0.3), length: 0.4, offset: [0, 0], ...more },
  }) as JointPiece;
/** The same walls as a box open at both ends. */
const box = {
  box: { width: 0.5, height: 0.3, length: 0.4, caps: { start: false, end: false }, openings: [] },
  flat: { outside: { width: 0.5, height: 0.3, length: 0.4 } },
} as unknown as FoldedBox;
const sides = ['top', 'left', 'bottom', 'right'];
const turns = [
  [35, 25],
  [-50, 10],
  [140, -30],
  [80, 60],
] as const;

describe('a piece between unit and duct, folded', () => {
  it('shows as straight piece what a box of its size shows that is open at both ends', () => {
    for (const [turn, tilt] of turns) {
      const ofBox = foldedFaces(box, turn, tilt).map((f) => `${f.side} ${f.inside}`);
      const own = jointFaces(joint({}), turn, tilt).map((f) => `${sides[Number(f.side)]} ${f.inside}`);
      expect(own.sort()).toEqual(ofBox.sort());
    }
  });

  it('has its far end to the right and up by its offset, seen along it', () => {
    const [face] = jointFaces(joint({ offset: [0.1, 0.05], end: rectangle(0.2, 0.1) }), 0, 0);
    // The top wall: near right, near left, far left, far right; cm, y downward, about the middle of both ends.
    expect(face?.corners.map((c) => c.map((x) => Math.round(x * 10) / 10))).toEqual([
      [20, -12.5],
      [-30, -12.5],
      [-5, -7.5],
      [15, -7.5],
    ]);
  });

  it('is round at a round end', () => {
    const end = { kind: 'round' as const, diameter: 0.25 };
    const far = jointFaces(joint({ end }), 0, 0).flatMap((f) => f.corners.slice(2));
    for (const [x, y] of far) expect(Math.hypot(x, y)).toBeCloseTo(12.5, 9);
  });
});
