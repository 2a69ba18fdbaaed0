import { Checking, type CutProblem } from '../problem.ts';
import { type Board, type BoardForm, boardOf, boards, forms, pieceLength } from './board.ts';
import type { BoardBox, Side } from './boardBox.ts';
import { boardPiece } from './boardPiece.ts';
import { endCap } from './endCap.ts';
import { acrossOf, holesOfCap, holesOfSection, wrongOpenings } from './openings.ts';
import type { FlatPiece } from './pattern.ts';
import { plugDepth, sectionsOf } from './sections.ts';

/** Sides in the order in which they lie on the board, seen from the inside: counter-clockwise from the left. */
export const sidesAround: readonly Side[] = ['left', 'bottom', 'right', 'top'];

export type UnfoldedBox = {
  readonly pieces: readonly FlatPiece[];
  readonly form?: BoardForm;
  readonly inside: { readonly width: number; readonly height: number; readonly length: number };
  /** For hatch, hangers and headroom. Closed ends counted. */
  readonly outside: { readonly width: number; readonly height: number; readonly length: number };
  readonly problems: readonly CutProblem[];
};

/** m of wall before the air inside, and all in all. */
function wallsOf(box: BoardBox, board: Board): { readonly before: number; readonly length: number } {
  const before = box.caps.start ? plugDepth(board) : 0;
  return { before, length: before + box.length + (box.caps.end ? plugDepth(board) : 0) };
}

const piecesOf = (form: BoardForm): Side[][] => {
  let from = 0;
  return forms[form].map((n) => {
    from += n;
    return sidesAround.slice(from - n, from);
  });
};

type Way = { readonly form: BoardForm; readonly lengthMost: number };

/** Forms whose pieces fit the sheet one way or the other, the fewest pieces first, then the fewest joints along. */
function waysOf(box: BoardBox, board: Board): Way[] {
  const { width, height } = box.sheet;
  const orders: readonly BoardForm[] = box.form === 'fewest' ? ['one', 'l', 'u', 'four'] : [box.form];
  const ways = orders.flatMap((form) => {
    const longest = Math.max(
      ...piecesOf(form).map((sides) =>
        pieceLength(
          board,
          sides.map((s) => acrossOf(box, s)),
        ),
      ),
    );
    // What lies across the grooves takes one side of the sheet; the length of the duct takes the other.
    const along = [longest <= width + 1e-9 ? height : 0, longest <= height + 1e-9 ? width : 0];
    const lengthMost = Math.max(...along);
    return lengthMost > board.thickness ? [{ form, lengthMost }] : [];
  });
  const joints = (w: Way) => sectionsOf(wallsOf(box, board).length, w.lengthMost, board).length * forms[w.form].length;
  const fewest = Math.min(...ways.map(joints));
  return ways.filter((w) => joints(w) === fewest);
}

function checked(box: BoardBox): { readonly check: Checking; readonly board: Board | undefined } {
  const check = new Checking();
  for (const side of ['width', 'height', 'length'] as const) check.positive([side], box[side]);
  for (const side of ['width', 'height'] as const) check.positive(['sheet', side], box.sheet[side]);
  const board = boardOf(box.thickness);
  const [least, most] = [boards[0]?.thickness ?? 0, boards.at(-1)?.thickness ?? 0];
  if (!board) check.say('out-of-table', ['thickness'], box.thickness, { min: least, max: most });
  return { check, board };
}

const nothing = (box: BoardBox, problems: readonly CutProblem[]): UnfoldedBox => {
  const inside = { width: box.width, height: box.height, length: box.length };
  return { pieces: [], inside, outside: inside, problems };
};

/**
 * A duct or plenum of board as flat pieces: by the published table for 1, 1 1/2 and 2 in, in as few pieces and sections as
 * its sheet allows, with grooves, laps, flaps, holes and end caps. Inside sizes in, m; the outside is told apart. Longer
 * than the sheet: several sections, each but the last with a half-board end that goes into the next. Bad input: no pieces,
 * and everything wrong in `problems`; never throws. Source: `cutting.board`.
 */
export function unfoldBox(box: BoardBox): UnfoldedBox {
  const { check, board } = checked(box);
  if (!board || check.problems.length > 0) return nothing(box, check.problems);
  const [way] = waysOf(box, board);
  const capSize = Math.max(box.width, box.height) + 2 * board.thickness;
  const capSmall = Math.min(box.width, box.height) + 2 * board.thickness;
  const [long, short] = [Math.max(box.sheet.width, box.sheet.height), Math.min(box.sheet.width, box.sheet.height)];
  if (!way) check.say('larger-than-stock', ['width'], box.width + box.height, { max: long });
  if ((box.caps.start || box.caps.end) && (capSize > long + 1e-9 || capSmall > short + 1e-9))
    check.say('larger-than-stock', ['caps'], capSize, { max: long });
  if (!way) return nothing(box, check.problems);
  const walls = wallsOf(box, board);
  const sections = sectionsOf(walls.length, way.lengthMost, board);
  wrongOpenings(box, sections, walls.before, check);
  if (check.problems.length > 0) return nothing(box, check.problems);
  const pieces = sections.flatMap((section, n) =>
    piecesOf(way.form).map((sides, k) =>
      boardPiece({
        id: [box.id, ...(sections.length > 1 ? [n + 1] : []), ...(forms[way.form].length > 1 ? ['abcd'[k]] : [])].join(
          ' ',
        ),
        board,
        sides: sides.map((name) => ({ name, across: acrossOf(box, name) })),
        section,
        air: { from: walls.before, to: walls.before + box.length },
        holes: holesOfSection(box, section, walls.before),
      }),
    ),
  );
  const caps = (['start', 'end'] as const).filter((end) => box.caps[end]);
  const t = board.thickness;
  return {
    pieces: [...pieces, ...caps.map((end) => endCap(`${box.id} ${end}`, box, board, holesOfCap(box, end)))],
    form: way.form,
    inside: { width: box.width, height: box.height, length: box.length },
    outside: { width: box.width + 2 * t, height: box.height + 2 * t, length: box.length + caps.length * t },
    problems: [],
  };
}
