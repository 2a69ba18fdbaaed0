import type { Layout, Style } from './block.ts';
import type { Letters } from './planSet.ts';

type Look = {
  readonly fontSize: number;
  readonly bold?: boolean;
  readonly color?: string;
  readonly margin?: readonly [number, number, number, number];
};

/** Points; every size grows together. */
const sizes: Readonly<Record<Style, Look>> = {
  title: { fontSize: 26, bold: true, margin: [0, 24, 0, 6] },
  heading: { fontSize: 16, bold: true, margin: [0, 0, 0, 4] },
  part: { fontSize: 11, bold: true, margin: [0, 8, 0, 3] },
  lead: { fontSize: 10, margin: [0, 0, 0, 8] },
  body: { fontSize: 9, margin: [0, 0, 0, 4] },
  small: { fontSize: 7.5, margin: [0, 0, 0, 2] },
  cell: { fontSize: 8.5 },
  head: { fontSize: 8, bold: true },
  caution: { fontSize: 8.5, bold: true, margin: [0, 0, 0, 1] },
  unseen: { fontSize: 1, color: '#fff' },
};

const grown: Readonly<Record<Letters, number>> = { plain: 1, large: 1.6 };

export const stylesFor = (letters: Letters): Readonly<Record<Style, Look>> =>
  Object.fromEntries(
    Object.entries(sizes).map(([style, look]) => [style, { ...look, fontSize: look.fontSize * grown[letters] }]),
  ) as Record<Style, Look>;

type Rows = { readonly table: { readonly body: readonly unknown[]; readonly headerRows: number } };

/** Rules between rows only, or a box round every cell to write into. Black: paper is copied. */
export const layouts: Readonly<Record<Layout, unknown>> = {
  ruled: {
    hLineWidth: (row: number, { table }: Rows) => (row < table.headerRows ? 0 : row === table.headerRows ? 0.8 : 0.3),
    vLineWidth: () => 0,
    paddingLeft: (column: number) => (column === 0 ? 0 : 5),
    paddingRight: () => 3,
    paddingTop: () => 2,
    paddingBottom: () => 2,
  },
  boxed: {
    hLineWidth: () => 0.5,
    vLineWidth: () => 0.5,
    paddingLeft: () => 3,
    paddingRight: () => 3,
    paddingTop: () => 3,
    paddingBottom: () => 3,
  },
};
