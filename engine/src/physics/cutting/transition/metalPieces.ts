import { type FlatLine, type FlatPiece, measure, type Spot } from '../fold/pattern.ts';
import { type Bend, bendDeduction } from '../metal/bend.ts';
import { type Transition, type TransitionEnd, unfoldTransition } from '../metal/transition.ts';
import type { CutProblem } from '../problem.ts';
import { levelled } from './level.ts';
import { type SideFlat, sidesFlat } from './sidesFlat.ts';

/** A transition of sheet metal by its inside sizes, m, and the sheet it has to come from. */
export type MetalTransition = Transition & {
  readonly thickness: number;
  readonly radius: number;
  readonly neutral: number;
  readonly sheet: { readonly width: number; readonly height: number };
};

export type TransitionPieces = { readonly pieces: readonly FlatPiece[]; readonly problems: readonly CutProblem[] };

/** Sides of each piece: two halves, each an L; else each side by itself. One piece for all four lies in a wide arc and wastes its sheet. */
const splits: readonly (readonly number[])[] = [
  [2, 2],
  [1, 1, 1, 1],
];

export const fits = (
  { width, height }: { readonly width: number; readonly height: number },
  sheet: MetalTransition['sheet'],
): boolean =>
  (width <= sheet.width + 1e-9 && height <= sheet.height + 1e-9) ||
  (width <= sheet.height + 1e-9 && height <= sheet.width + 1e-9);

/**
 * A transition of sheet metal as two halves, or four sides where the sheet is small, each with a seam left beyond its first edge: bends
 * take what they take of a square corner, so that the sizes asked for are those inside. A round end comes in one piece or
 * not at all. Bad sizes or no fit: no pieces and `problems`; never throws. Sources: `cutting.triangulation`, `cutting.bend`.
 */
export function metalTransition(t: MetalTransition): TransitionPieces {
  const bend: Bend = { thickness: t.thickness, radius: t.radius, neutral: t.neutral, angle: 90 };
  const more = 2 * t.thickness - bendDeduction(bend);
  const flat = unfoldTransition({ ...t, start: grown(t.start, more, t), end: grown(t.end, more, t) });
  if (!flat.piece) return { pieces: [], problems: flat.problems };
  const { piece } = flat;
  const sides = sidesFlat(flat);
  const ways = sides
    ? splits.map((split) => splitBy(split, sides, t))
    : [[{ ...piece, ...levelled(piece), measures: [] }]];
  const found = ways.find((pieces) => pieces.every((p) => fits(p.size, t.sheet)));
  if (found) return { pieces: found, problems: [] };
  const [first] = ways.at(-1) ?? [];
  const most = Math.max(t.sheet.width, t.sheet.height);
  const longest = Math.max(first?.size.width ?? 0, first?.size.height ?? 0);
  return {
    pieces: [],
    problems: [{ code: 'larger-than-stock', at: ['length'], found: longest, allowed: { max: most } }],
  };
}

/** To the sizes at which sharp corners take as much metal as bent ones; of a round end the middle of the sheet. */
const grown = (end: TransitionEnd, more: number, { thickness }: MetalTransition): TransitionEnd =>
  end.kind === 'round'
    ? { kind: 'round', diameter: end.diameter + thickness }
    : { kind: 'rectangle', width: end.width + more, height: end.height + more };

function splitBy(split: readonly number[], sides: readonly SideFlat[], { id, seam }: MetalTransition): FlatPiece[] {
  let at = 0;
  return split.map((n, k) => {
    const own = sides.slice(at, at + n);
    at += n;
    const [first] = own;
    const low = [...(first ? [first.start[0]] : []), ...own.map((s) => s.start[1])];
    const high = [...(first ? [first.end[0]] : []), ...own.map((s) => s.end[1])];
    const folds = own.slice(1).map((s): FlatLine => ({ kind: 'fold', from: s.start[0], to: s.end[0] }));
    return pieceOf(`${id} ${'abcd'[k]}`, low, high, folds, seam);
  });
}

/** From the corners along both ends: the seam lies beyond the first edge, its corners cut off at 45 degrees. */
function pieceOf(
  id: string,
  low: readonly Spot[],
  high: readonly Spot[],
  folds: readonly FlatLine[],
  seam: number,
): FlatPiece {
  const [s, e]: readonly [Spot, Spot] = [low[0] ?? [0, 0], high[0] ?? [0, 0]];
  const long = Math.hypot(e[0] - s[0], e[1] - s[1]) || 1;
  const [dx, dy] = [(e[0] - s[0]) / long, (e[1] - s[1]) / long];
  const strip: Spot[] =
    seam > 0
      ? [
          [e[0] - seam * dy - seam * dx, e[1] + seam * dx - seam * dy],
          [s[0] - seam * dy + seam * dx, s[1] + seam * dx + seam * dy],
        ]
      : [];
  const lap: FlatLine[] = seam > 0 ? [{ kind: 'lap', from: s, to: e }] : [];
  const lying = levelled({ outline: [...low, ...[...high].reverse(), ...strip], lines: [...lap, ...folds] });
  const [corner, opposite]: readonly [Spot, Spot] = [lying.outline[0] ?? [0, 0], lying.outline[low.length] ?? [0, 0]];
  return { id, ...lying, holes: [], panels: [], measures: [measure(corner, opposite, 'check')] };
}
