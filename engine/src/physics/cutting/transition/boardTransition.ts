import { boardOf, boards, foldDepth } from '../fold/board.ts';
import { type FlatPiece, measure, type Spot } from '../fold/pattern.ts';
import { type Transition, unfoldTransition } from '../metal/transition.ts';
import { cornered } from './level.ts';
import { fits, type MetalTransition, type TransitionPieces } from './metalPieces.ts';
import { type SideFlat, sidesFlat } from './sidesFlat.ts';

/** A transition of board by its inside sizes, m, between two rectangles. */
export type BoardTransition = Omit<Transition, 'seam' | 'parts'> & Pick<MetalTransition, 'thickness' | 'sheet'>;

/**
 * A transition of board as four plane sides: each with the lap that a single side of a box has at its left, and half a board
 * and the flap at its right. The inside faces meet at the sizes asked for; corners that lean are shaved to close. A round end,
 * bad sizes or no fit: no pieces and `problems`; never throws. Sources: `cutting.board`, `cutting.triangulation`.
 */
export function boardTransition(t: BoardTransition): TransitionPieces {
  const board = boardOf(t.thickness);
  const [least, most] = [boards[0]?.thickness ?? 0, boards.at(-1)?.thickness ?? 0];
  if (!board)
    return {
      pieces: [],
      problems: [{ code: 'out-of-table', at: ['thickness'], found: t.thickness, allowed: { min: least, max: most } }],
    };
  const flat = unfoldTransition({ ...t, parts: 1, seam: 0 });
  const sides = sidesFlat(flat);
  if (flat.problems.length > 0) return { pieces: [], problems: flat.problems };
  if (!sides) return { pieces: [], problems: [{ code: 'does-not-fit', at: ['end'], found: 'round' }] };
  const before = foldDepth(board);
  const pieces = sides.map((side) =>
    sidePiece(`${t.id} ${side.name}`, side, [before, board.thickness / 2, board.flap]),
  );
  const large = pieces.find((p) => !fits(p.size, t.sheet));
  if (!large) return { pieces, problems: [] };
  const found = Math.max(large.size.width, large.size.height);
  const max = Math.max(t.sheet.width, t.sheet.height);
  return { pieces: [], problems: [{ code: 'larger-than-stock', at: ['length'], found, allowed: { max } }] };
}

/** A side with its start level below: laps `before` it at the left, `half` a board and the `flap` beyond it at the right. */
function sidePiece(id: string, side: SideFlat, [before, half, flap]: readonly [number, number, number]): FlatPiece {
  const [s0, s1] = side.start;
  const width = Math.hypot(s1[0] - s0[0], s1[1] - s0[1]);
  const [c, s] = [(s1[0] - s0[0]) / width, (s1[1] - s0[1]) / width];
  const local = ([x, y]: Spot): Spot => [(x - s0[0]) * c + (y - s0[1]) * s, (y - s0[1]) * c - (x - s0[0]) * s];
  const [e0, e1] = [local(side.end[0]), local(side.end[1])];
  const high = e0[1];
  // A strip beside a leaning edge is wider along the level ends than across.
  const [left, right] = [Math.hypot(e0[0], high) / high, Math.hypot(e1[0] - width, high) / high];
  const edge = (low: number, top: number) => ({ from: [low, 0] as Spot, to: [top, high] as Spot });
  const inner = [edge(0, e0[0]), edge(width, e1[0]), edge(width + half * right, e1[0] + half * right)];
  const outer = (half + flap) * right;
  const lying = cornered({
    outline: [
      [-before * left, 0],
      [width + outer, 0],
      [e1[0] + outer, high],
      [e0[0] - before * left, high],
    ],
    lines: inner.map((l) => ({ kind: 'lap', ...l })),
  });
  const [a, b] = [lying.lines[0], lying.lines[1]];
  const [from, to]: readonly [Spot, Spot] = [a?.from ?? [0, 0], b?.to ?? [0, 0]];
  return {
    id,
    ...lying,
    holes: [],
    panels: [{ name: side.name, from: [0, 0], to: [lying.size.width, high], inside: { from, to } }],
    measures: [measure(from, to, 'check')],
  };
}
