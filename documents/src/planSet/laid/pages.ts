import type { Block, Margin, PageSize } from '../block.ts';
import type { Piece } from './box.ts';
import { type Box, cutBox, empty, type Open, put } from './box.ts';
import { piecesOf } from './pieces.ts';
import type { Setting } from './setting.ts';

/** A page with all that stands on it, points. */
export type Page = PageSize & Open;

type Paper = PageSize & { readonly margins: Margin };

/** Pages being filled: the one that is written on, if any, and how far down. */
type Filling = { readonly pages: Page[]; here: Sheet | undefined; y: number };
type Sheet = { readonly page: Page; readonly top: number; readonly bottom: number };

/**
 * Blocks on pages. A drawing has paper of its own; what comes behind it is on plain paper again. A box that is higher than
 * a page is cut between lines, all others are whole. `tell` is called after each block.
 */
export function pagesOf(
  content: readonly Block[],
  plain: Paper,
  setting: Setting,
  tell?: (done: number, total: number) => void,
): Page[] {
  const filling: Filling = { pages: [], here: undefined, y: 0 };
  for (const [i, block] of content.entries()) {
    if (!('section' in block)) fillWith(filling, block, plain, setting);
    else {
      const { section, pageSize, pageMargins: m } = block;
      const paper = { ...pageSize, margins: typeof m === 'number' ? ([m, m, m, m] as const) : m };
      turn(filling);
      for (const b of section) if (!('section' in b)) fillWith(filling, b, paper, setting);
      turn(filling);
    }
    tell?.(i + 1, content.length);
  }
  turn(filling);
  return filling.pages;
}

type Plain = Exclude<Block, { readonly section: unknown }>;

function fillWith(filling: Filling, block: Plain, paper: Paper, setting: Setting): void {
  const { width, margins } = paper;
  for (const piece of piecesOf(block, margins[0], width - margins[0] - margins[2], setting)) {
    if (piece.kind === 'turn') turn(filling);
    else if (piece.kind === 'box') place(filling, piece, paper);
    else if (sheetOf(filling, paper).bottom < filling.y + piece.height) turn(filling);
    else filling.y += piece.height;
  }
}

/** Ends the page. One with nothing but a gap on it is none. */
function turn(filling: Filling): void {
  if (filling.here?.page.lines.length === 0) filling.pages.pop();
  filling.here = undefined;
}

function sheetOf(filling: Filling, { width, height, margins }: Paper): Sheet {
  if (filling.here) return filling.here;
  const page = { width, height, ...empty() };
  filling.pages.push(page);
  filling.here = { page, top: margins[1], bottom: height - margins[3] };
  filling.y = margins[1];
  return filling.here;
}

/** Less than any printer shows: sums of heights are rounded differently. */
const hair = 1e-6;

function place(filling: Filling, { box, head, parts }: Extract<Piece, { readonly kind: 'box' }>, paper: Paper): void {
  const { top, bottom } = sheetOf(filling, paper);
  const least = parts ? Math.max(0, ...box.lines.filter((l) => l.y === 0).map((l) => l.line.height)) : box.height;
  if (filling.y + least > bottom + hair && filling.y > top) {
    turn(filling);
    sheetOf(filling, paper);
    if (head) putDown(filling, head, paper);
  }
  let rest = box;
  while (filling.y + rest.height > sheetOf(filling, paper).bottom + hair && rest.lines.length > 1) {
    const [part, below] = cutBox(rest, sheetOf(filling, paper).bottom - filling.y);
    putDown(filling, part, paper);
    turn(filling);
    rest = below;
    sheetOf(filling, paper);
  }
  putDown(filling, rest, paper);
}

function putDown(filling: Filling, box: Box, paper: Paper): void {
  put(sheetOf(filling, paper).page, box, 0, filling.y);
  filling.y += box.height;
}
