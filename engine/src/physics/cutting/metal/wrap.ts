import type { Opening } from '../fold/boardBox.ts';
import {
  centreLines,
  type FlatHole,
  type FlatLine,
  type FlatPiece,
  measure,
  reachOf,
  rectangle,
} from '../fold/pattern.ts';
import { Checking, type CutProblem } from '../problem.ts';
import { type Bend, bendAllowance, bendDeduction } from './bend.ts';

/** A box of sheet metal wrapped in one piece: outside sizes, thickness, inside radius of the bends, all in m. */
export type MetalWrap = {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly length: number;
  readonly thickness: number;
  readonly radius: number;
  readonly neutral: number;
  /** Bent over the first side and fastened. */
  readonly lap: number;
  /** Measured inside, as in a box of board; in its four sides only, and within them. */
  readonly openings?: readonly Opening[];
};

export type FlatMetal = { readonly piece?: FlatPiece; readonly problems: readonly CutProblem[] };

/**
 * The wrap flat: four sides and the lap, with a line in the middle of each of its four bends. Each bend takes its deduction,
 * half on either side. Outside sizes in, m. Bad input: no piece and `problems`; never throws. Source: `cutting.bend`.
 */
export function unfoldWrap(w: MetalWrap): FlatMetal {
  const check = new Checking();
  for (const k of ['width', 'height', 'length', 'thickness', 'lap'] as const) check.positive([k], w[k]);
  check.atLeastNought(['radius'], w.radius);
  if (!(w.neutral >= 0 && w.neutral <= 1)) check.say('out-of-table', ['neutral'], w.neutral, { min: 0, max: 1 });
  const bend: Bend = { thickness: w.thickness, radius: w.radius, neutral: w.neutral, angle: 90 };
  const least = 2 * (w.radius + w.thickness);
  for (const k of ['width', 'height'] as const) if (w[k] < least) check.say('does-not-fit', [k], w[k], { min: least });
  if (w.lap < least / 2) check.say('does-not-fit', ['lap'], w.lap, { min: least / 2 });
  if (check.problems.length > 0) return { problems: check.problems };
  const taken = bendDeduction(bend);
  const sides = [w.width, w.height, w.width, w.height];
  let outside = 0;
  const bends = sides.map((side, i) => {
    outside += side;
    return outside - (i + 0.5) * taken;
  });
  const width = outside - 4 * taken + w.lap;
  const edges = [0, ...bends, width];
  const lines = bends.map((x): FlatLine => ({ kind: 'fold', from: [x, 0], to: [x, w.length] }));
  const holes = holesOf(w, bends, bendAllowance(bend));
  const piece: FlatPiece = {
    id: w.id,
    outline: rectangle(width, w.length),
    size: { width, height: w.length },
    lines: [...lines, ...holes.flatMap((h) => centreLines(h.centre, Math.max(reachOf(h).x, reachOf(h).y) + 0.02))],
    holes,
    panels: ['bottom', 'right', 'top', 'left', 'lap'].map((name, i) => {
      const [from, to] = [edges[i] ?? 0, edges[i + 1] ?? width];
      return { name, from: [from, 0], to: [to, w.length], inside: { from: [from, 0], to: [to, w.length] } };
    }),
    measures: [
      ...[...bends, width].map((x) => measure([0, 0], [x, 0], 'edge')),
      measure([0, 0], [0, w.length], 'whole'),
      measure([0, 0], [width, w.length], 'check'),
      ...holes.flatMap(({ centre: [x, y] }) => [measure([0, y], [x, y], 'hole'), measure([x, 0], [x, y], 'hole')]),
    ],
  };
  return { piece, problems: [] };
}

/** Sides as they lie, seen from within: along the bottom to the right, up the right, back along the top, down the left. */
const sides: readonly Opening['side'][] = ['bottom', 'right', 'top', 'left'];

/** Holes where they lie flat: an inside corner is the radius short of where its bend's arc, as long as `allowance`, ends. */
function holesOf(w: MetalWrap, bends: readonly number[], allowance: number): FlatHole[] {
  return (w.openings ?? []).flatMap(({ id, side, along, across, shape }): FlatHole[] => {
    const i = sides.indexOf(side);
    if (i < 0) return [];
    const before = bends[i - 1];
    // The first side begins at its outer edge: the last one's wall stands on it.
    const corner = before === undefined ? w.thickness : before + allowance / 2 - w.radius;
    const inside = (i % 2 === 0 ? w.width : w.height) - 2 * w.thickness;
    return [{ id, centre: [corner + (i < 2 ? across : inside - across), along], shape }];
  });
}
