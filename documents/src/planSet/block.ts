import { glued } from '@kneewall/project';

/**
 * The pieces a plan set is made of. Pages build them with the functions below only, so that every list and every table
 * looks alike; `laid/` puts them on paper.
 */
export type Words = string | readonly Words[] | { readonly text: Words; readonly bold?: boolean };

export type Block =
  | {
      readonly text: Words;
      /** By which its page is found again. */
      readonly id?: string;
      readonly style?: Style;
      readonly bold?: boolean;
      readonly margin?: Margin;
      readonly outline?: boolean;
      readonly tocItem?: boolean;
      readonly pageBreak?: 'before' | undefined;
      readonly alignment?: 'right';
      readonly colSpan?: number;
    }
  | { readonly ul: readonly Words[]; readonly margin?: Margin }
  | { readonly columns: readonly Block[]; readonly columnGap: number }
  | { readonly stack: readonly Block[]; readonly unbreakable?: boolean; readonly margin?: Margin }
  | { readonly table: Table; readonly layout: Layout; readonly margin?: Margin }
  | { readonly toc: { readonly title: Block; readonly textMargin: Margin } }
  | { readonly section: readonly Block[]; readonly pageSize: PageSize; readonly pageMargins: number | Margin };

export type Margin = readonly [left: number, top: number, right: number, bottom: number];
export type PageSize = { readonly width: number; readonly height: number };
export type Style = 'title' | 'heading' | 'part' | 'lead' | 'body' | 'small' | 'cell' | 'head' | 'caution' | 'unseen';
export type Layout = 'ruled' | 'boxed';

export type Table = {
  readonly headerRows: number;
  readonly widths: readonly (number | 'auto' | '*')[];
  readonly body: readonly (readonly Block[])[];
};

/** Points of a millimetre: papers are thought of in mm, PDF in 1/72 in. */
export const points = (millimetres: number): number => (millimetres * 72) / 25.4;

/** Starts a part of the set on a new page, with a bookmark and a line in the contents. */
export const page = (title: string): Block => ({
  text: title,
  style: 'heading',
  outline: true,
  tocItem: true,
  pageBreak: 'before',
});

export const part = (title: string): Block => ({ text: title, style: 'part' });
export const lead = (text: Words): Block => ({ text, style: 'lead' });
export const body = (text: Words): Block => ({ text, style: 'body' });
export const small = (text: Words): Block => ({ text, style: 'small' });
export const bold = (text: string): Words => ({ text, bold: true });
export const list = (items: readonly Words[]): Block => ({ ul: items, margin: [0, 0, 0, 6] });

/** Lines to be ticked off. */
export const checklist = (items: readonly Words[]): Block => ({
  stack: items.map((text) => ({ text: ['☐  ', text], style: 'body' })),
  margin: [0, 0, 0, 6],
});

/** Short lines to be ticked off, read down one column after the other. */
export function columnsOf(items: readonly Words[], columns: number): Block {
  const each = Math.ceil(items.length / columns);
  return {
    columns: Array.from({ length: columns }, (_, i) => checklist(items.slice(i * each, (i + 1) * each))),
    columnGap: 12,
  };
}

/** A card with a line round it, never parted by the end of a page. */
export const boxed = (blocks: readonly Block[]): Block => ({
  table: {
    headerRows: 0,
    widths: ['*'],
    body: [[{ stack: blocks }]],
  },
  layout: 'boxed',
  margin: [0, 0, 0, 6],
});

/** Widths as the share each column takes, or `auto` for as wide as its words. */
export type Column = { readonly head: string; readonly width: number | 'auto' | '*'; readonly right?: boolean };

/**
 * A ruled table; its title and head come again on every page, so that neither is left alone at the foot of one, and no
 * row is parted.
 */
export function table(
  columns: readonly Column[],
  rows: readonly (readonly Words[])[],
  { title, layout = 'ruled' }: { readonly title?: string; readonly layout?: Layout } = {},
): Block {
  const cell = (text: Words, column: Column | undefined, style: Style): Block => ({
    // What stands at the right is a measure, and is read with its unit.
    text: column?.right && typeof text === 'string' ? glued(text) : text,
    style,
    ...(column?.right ? { alignment: 'right' as const } : {}),
  });
  const heads = [
    ...(title === undefined ? [] : [titleRow(title, columns.length)]),
    columns.map((c) => cell(c.head, c, 'head')),
  ];
  const made: Block = {
    table: {
      headerRows: heads.length,
      widths: columns.map((c) => c.width),
      body: [...heads, ...rows.map((row) => row.map((text, i) => cell(text, columns[i], 'cell')))],
    },
    layout,
    margin: [0, 2, 0, 8],
  };
  return rows.length <= keptTogether ? { stack: [made], unbreakable: true } : made;
}

/** A table of so few rows is not parted by the end of a page. */
const keptTogether = 6;

const titleRow = (title: string, columns: number): Block[] => [
  { text: title, style: 'part', colSpan: columns },
  ...Array.from({ length: columns - 1 }, (): Block => ({ text: '' })),
];
