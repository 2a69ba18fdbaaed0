import type { Block, Layout, Table } from '../block.ts';
import { layouts, type Ruling } from '../styles.ts';
import type { Piece } from './box.ts';
import { type Box, boxOf, empty, type Open, put } from './box.ts';
import { columnWidths } from './columns.ts';
import { widthsOf } from './inlines.ts';
import type { Laid, Setting } from './setting.ts';
import { marginOf, wordsOf } from './texts.ts';

/**
 * A table in pieces: its head with the first row, then a row each, so that no row is parted and no head is left alone; the
 * head stands again above what begins a page.
 */
export function tablePieces(
  table: Table,
  layout: Layout,
  x: number,
  width: number,
  setting: Setting,
  piecesOf: (cell: Laid, x: number, width: number, setting: Setting) => Piece[],
): Piece[] {
  const ruling = layouts[layout];
  const within: Within = (cell, from, to) => boxOf(piecesOf(cell, from, to - from, setting));
  const columns = columnsOf(table, ruling, x, width, setting);
  const heads = boxOf([
    { kind: 'gap', height: ruling.across(0, table.headerRows) },
    ...table.body.slice(0, table.headerRows).map((cells, i) => rowOf(cells, i, table, ruling, columns, within)),
  ]);
  const rows = table.body
    .slice(table.headerRows)
    .map((cells, i) => rowOf(cells, table.headerRows + i, table, ruling, columns, within));
  const [first, ...others] = rows;
  const top = topRule(ruling, table, columns, heads);
  return [
    { kind: 'box', box: boxOf([{ kind: 'box', box: top }, ...(first ? [first] : [])]) },
    ...others.map(({ box }): Piece => ({ kind: 'box', box, head: top })),
  ];
}

/** What is written in a cell, from here to there. */
type Within = (cell: Laid, from: number, to: number) => Box;

/** Where columns stand: `edges` between them, `starts` and `widths` of what is written in them. */
type Columns = {
  readonly edges: readonly number[];
  readonly starts: readonly number[];
  readonly widths: readonly number[];
};

function columnsOf(table: Table, ruling: Ruling, x: number, width: number, setting: Setting): Columns {
  const { upright, left, right } = ruling;
  const pads = table.widths.map((_, i) => upright + left(i) + right);
  const room = width - pads.reduce((sum, pad) => sum + pad, 0) - upright;
  const widths = columnWidths(askedOf(table, ruling, setting), room);
  const edges = [x];
  const starts: number[] = [];
  widths.forEach((w, i) => {
    const edge = edges[i] ?? x;
    starts.push(edge + upright + left(i));
    edges.push(edge + (pads[i] ?? 0) + w);
  });
  return { edges, starts, widths };
}

/** What each column asks for; what a title over all of them needs more is shared out. */
function askedOf(table: Table, { upright, left, right }: Ruling, setting: Setting) {
  const asked = table.widths.map((width) => ({ width, least: 0, most: 0 }));
  for (const row of table.body)
    row.forEach((cell, i) => {
      const column = asked[i];
      if (!column || spanOf(row) > 1) return;
      const { least, most } = cellWidths(cell, setting);
      column.least = Math.max(column.least, least);
      column.most = Math.max(column.most, most);
    });
  for (const row of table.body) {
    const [cell] = row;
    if (!cell || spanOf(row) === 1) continue;
    const between = asked.reduce((sum, _, i) => sum + (i === 0 ? 0 : right + upright + left(i)), 0);
    for (const key of ['least', 'most'] as const) {
      const more = cellWidths(cell, setting)[key] - between - asked.reduce((sum, c) => sum + c[key], 0);
      if (more > 0) for (const column of asked) column[key] += more / asked.length;
    }
  }
  return asked;
}

/** A title goes over all columns; every other cell has one. */
const spanOf = ([first]: readonly Block[]): number => (first && 'colSpan' in first ? (first.colSpan ?? 1) : 1);

function cellWidths(cell: Block, setting: Setting): { least: number; most: number } {
  if (!('text' in cell)) return { least: 0, most: 0 };
  const [left, , right] = marginOf(cell, setting.looks);
  const { least, most } = widthsOf(wordsOf(cell, setting));
  return { least: least + left + right, most: most + left + right };
}

type Row = Extract<Piece, { readonly kind: 'box' }>;

function rowOf(
  cells: readonly Block[],
  index: number,
  table: Table,
  ruling: Ruling,
  { edges, starts, widths }: Columns,
  within: Within,
): Row {
  const into = empty();
  const span = spanOf(cells);
  let height = 0;
  cells.slice(0, span > 1 ? 1 : cells.length).forEach((cell, i) => {
    if ('section' in cell) return;
    const start = starts[i] ?? 0;
    const last = span > 1 ? span - 1 : i;
    const end = (starts[last] ?? 0) + (widths[last] ?? 0);
    const box = within(cell, start, end);
    put(into, box, 0, ruling.above);
    height = Math.max(height, box.height);
  });
  height += 2 * ruling.above;
  const over = ruling.across(index, table.headerRows);
  const under = ruling.across(index + 1, table.headerRows);
  if (ruling.upright > 0)
    for (const edge of span > 1 ? [edges[0], edges[span]] : edges) {
      const middle = (edge ?? 0) + ruling.upright / 2;
      into.rules.push({ x: middle, toX: middle, y: -over, toY: height + under, width: ruling.upright });
    }
  level(into, edges, height, under);
  return { kind: 'box', box: { ...into, height: height + under } };
}

/** A rule from edge to edge, its upper side so far down. */
function level({ rules }: Open, edges: readonly number[], down: number, width: number): void {
  const y = down + width / 2;
  if (width > 0) rules.push({ x: edges[0] ?? 0, toX: edges.at(-1) ?? 0, y, toY: y, width });
}

/** The heads of a table below its uppermost rule. */
function topRule(ruling: Ruling, table: Table, { edges }: Columns, heads: Box): Box {
  const into = empty();
  put(into, heads, 0, 0);
  level(into, edges, 0, ruling.across(0, table.headerRows));
  return { ...into, height: heads.height };
}
