import type { Block } from '../block.ts';
import type { Piece } from './box.ts';
import { type Box, boxOf, type Entry, empty, put } from './box.ts';
import { inlinesOf } from './inlines.ts';
import { linesOf } from './lines.ts';
import type { Laid, Setting, Text } from './setting.ts';
import { tablePieces } from './tablePieces.ts';
import { lookOf, marginOf, wordsOf } from './texts.ts';

/** A block in the pieces between which pages may be turned, from `x` on, so wide; points. */
export function piecesOf(block: Laid, x: number, width: number, setting: Setting): Piece[] {
  const [left, top, right, bottom] = marginOf(block, setting.looks);
  const inside = insideOf(block, x + left, width - left - right, setting);
  return [
    ...('pageBreak' in block && block.pageBreak === 'before' ? [{ kind: 'turn' as const }] : []),
    ...(top === 0 ? [] : [{ kind: 'gap' as const, height: top }]),
    ...inside,
    ...(bottom === 0 ? [] : [{ kind: 'gap' as const, height: bottom }]),
  ];
}

function insideOf(block: Laid, x: number, width: number, setting: Setting): Piece[] {
  if ('text' in block) return paragraph(block, x, width, setting);
  if ('ul' in block) return block.ul.flatMap((item) => listed(item, x, width, setting));
  if ('table' in block) return tablePieces(block.table, block.layout, x, width, setting, piecesOf);
  if ('columns' in block) return [{ kind: 'box', box: sideBySide(block, x, width, setting), parts: true }];
  if ('toc' in block) return contents(block.toc, x, width, setting);
  const pieces = block.stack.flatMap((b) => ('section' in b ? [] : piecesOf(b, x, width, setting)));
  return block.unbreakable ? [{ kind: 'box', box: boxOf(pieces) }] : pieces;
}

/** Blocks in columns as wide as each other. */
function sideBySide({ columns, columnGap }: Columns, x: number, width: number, setting: Setting): Box {
  const into = empty();
  const each = (width + columnGap) / columns.length;
  const heights = columns.map((column, i) => {
    if ('section' in column) return 0;
    const box = boxOf(piecesOf(column, x + i * each, each - columnGap, setting));
    put(into, box, 0, 0);
    return box.height;
  });
  return { ...into, height: Math.max(0, ...heights) };
}

type Columns = Extract<Block, { readonly columns: unknown }>;

function paragraph(block: Text, x: number, width: number, setting: Setting): Piece[] {
  const look = lookOf(block, setting.looks);
  const lines = linesOf(wordsOf(block, setting), width, setting);
  return lines.map((line, i) => {
    const shift = block.alignment === 'right' ? width - line.width : 0;
    const entry = i === 0 ? entryOf(block, setting) : undefined;
    return single({ x: x + shift, y: 0, line, white: look.white, entry });
  });
}

/** By which name the contents and the drawings find a block, and its bookmark. */
function entryOf({ id, text, outline, tocItem }: Text, { contents }: Setting): Entry | undefined {
  const title = typeof text === 'string' ? text : '';
  const name = id ?? (tocItem ? contents.find((c) => c.title === title)?.name : undefined);
  return name === undefined && !outline ? undefined : { name, bookmark: outline ? title : undefined };
}

const single = (line: Box['lines'][number], dots: Box['dots'] = []): Piece => ({
  kind: 'box',
  box: { height: line.line.height, lines: [line], rules: [], dots },
});

/** One thing of a list behind its dot. */
function listed(item: Text['text'], x: number, width: number, setting: Setting): Piece[] {
  const look = lookOf({}, setting.looks);
  const { normal } = setting.face.fonts;
  const indent = (setting.face.word('9. ', false).width / 1000) * look.size;
  const down = (normal.ascender / 1000 - 1 / 3) * look.size;
  const lines = linesOf(inlinesOf(item, look, setting), width - indent, setting);
  return lines.map((line, i) =>
    single(
      { x: x + indent, y: 0, line, white: look.white },
      i === 0 ? [{ x: x + look.size / 6, y: down, radius: look.size / 6 }] : [],
    ),
  );
}

type Contents = Extract<Block, { readonly toc: unknown }>['toc'];

/** The parts of the set, each with its page at the right edge. */
function contents({ title, textMargin }: Contents, x: number, width: number, setting: Setting): Piece[] {
  const look = lookOf({}, setting.looks);
  const [, above, , below] = textMargin;
  const pad = 2;
  const number = (setting.face.word('00000', false).width / 1000) * look.size;
  const rows = setting.contents.map(({ title, name }): Piece => {
    const lines = linesOf(inlinesOf(title, look, setting), width - number - 8, setting);
    const box = boxOf(lines.map((line) => single({ x, y: 0, line, white: look.white, to: name })));
    const [first] = box.lines;
    const page = first ? [{ ...first, x: x + width, pageOf: name }] : [];
    const into = empty();
    put(into, { ...box, lines: [...box.lines, ...page] }, 0, pad + above);
    return { kind: 'box', box: { ...into, height: box.height + 2 * pad + above + below } };
  });
  return [...('section' in title ? [] : piecesOf(title, x, width, setting)), ...rows];
}
