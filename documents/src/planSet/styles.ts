import type { Layout, Style } from './block.ts';
import type { Letters } from './planSet.ts';

type Look = {
  readonly fontSize: number;
  readonly bold?: boolean;
  readonly white?: boolean;
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
  unseen: { fontSize: 1, white: true },
};

const grown: Readonly<Record<Letters, number>> = { plain: 1, large: 1.6 };

export type Looks = Readonly<Record<Style, Look>>;

export const stylesFor = (letters: Letters): Looks =>
  Object.fromEntries(
    Object.entries(sizes).map(([style, look]) => [style, { ...look, fontSize: look.fontSize * grown[letters] }]),
  ) as Record<Style, Look>;

/** How a table is ruled; points. `across`: the rule above the row of this number, below so many heads. */
export type Ruling = {
  readonly upright: number;
  readonly across: (row: number, heads: number) => number;
  readonly left: (column: number) => number;
  readonly right: number;
  /** Above and below what is written in a row. */
  readonly above: number;
};

/** Rules between rows only, or a box round every cell to write into. Black: paper is copied. */
export const layouts: Readonly<Record<Layout, Ruling>> = {
  ruled: {
    upright: 0,
    across: (row, heads) => (row < heads ? 0 : row === heads ? 0.8 : 0.3),
    left: (column) => (column === 0 ? 0 : 5),
    right: 3,
    above: 2,
  },
  boxed: { upright: 0.5, across: () => 0.5, left: () => 3, right: 3, above: 3 },
};
