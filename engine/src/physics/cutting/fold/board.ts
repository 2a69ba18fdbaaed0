import { inch } from '../../exact.ts';

/** A board of which boxes are folded, m. Source of all of it: `cutting.board`. */
export type Board = {
  readonly thickness: number;
  /** Added to the inside size of a panel that ends in a groove. */
  readonly added: number;
  /** And of a piece's last panel, which ends in half the board under its neighbour. */
  readonly addedLast: number;
  /** Bare facing beyond the last panel, to be stapled. */
  readonly flap: number;
};

const row = (thickness: number, added: number, addedLast: number, flap: number): Board => ({
  thickness: thickness * inch,
  added: added * inch,
  addedLast: addedLast * inch,
  flap: flap * inch,
});

/** The published table for shiplap and V-grooves alike: 1, 1 1/2 and 2 in. */
export const boards: readonly Board[] = [
  row(1, 1.75, 1.375, 1.375),
  row(1.5, 2.75, 2.125, 2.125),
  row(2, 3.75, 2.875, 2.5),
];

/** The board of that thickness, m, to a tenth of a millimetre; nothing between the table's rows. */
export const boardOf = (thickness: number): Board | undefined =>
  boards.find((b) => Math.abs(b.thickness - thickness) < 1e-4);

/**
 * m from the inside face to the line about which a groove folds. The table says it for every thickness alike: what is
 * added to a panel is twice this, an eighth of an inch less than the board, and the last panel is this and half a board.
 */
export const foldDepth = (b: Board): number => b.added / 2;

/** m of board beyond the inside sizes in a duct of one piece. */
export const stretchOut = (b: Board): number => 3 * b.added + b.addedLast + b.flap;

/** Forms of a duct's cross-section: panels of each piece, in order around it. */
export const forms = {
  one: [4],
  u: [3, 1],
  l: [2, 2],
  four: [1, 1, 1, 1],
} as const satisfies Record<string, readonly number[]>;
export type BoardForm = keyof typeof forms;

/** m along which a piece of those inside sizes is cut: all but the last with a groove after it, then half a board and the flap. */
export const pieceLength = (b: Board, insides: readonly number[]): number =>
  insides.reduce((sum, x) => sum + x, 0) + (insides.length - 1) * b.added + b.addedLast + b.flap;

/** Largest inside height + width, m, of a duct of one piece from a board's side that long. */
export const halfPerimeterMost = (b: Board, side: number): number => (side - stretchOut(b)) / 2;
