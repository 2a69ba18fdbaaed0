import type { BoardForm } from './board.ts';
import type { FlatHole } from './pattern.ts';

/** The four sides as seen when looking in at the start of the box along its length. */
export type Side = 'left' | 'bottom' | 'right' | 'top';

/** The ends, where they are closed. */
export type Cap = 'start' | 'end';

/** A duct or plenum of board. m; `width`, `height` and `length` are those of the air inside. */
export type BoardBox = {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly length: number;
  /** Of the board: one of the table's. */
  readonly thickness: number;
  readonly openings: readonly Opening[];
  readonly caps: { readonly start: boolean; readonly end: boolean };
  /** `fewest`: the fewest pieces that the sheet allows. */
  readonly form: BoardForm | 'fewest';
  /** The sheet it has to come from. */
  readonly sheet: { readonly width: number; readonly height: number };
};

/**
 * A hole in a side or a cap. m: `along` from the start of the air inside, `across` from the bottom of the left and right sides and
 * from the left of the bottom and top ones, both to the hole's middle and measured inside. A rectangle's `width` runs
 * across, its `height` along. In a cap, `across` is from the left and `along` from the bottom, as seen looking in at the start.
 */
export type Opening = {
  readonly id: string;
  readonly side: Side | Cap;
  readonly along: number;
  readonly across: number;
  readonly shape: FlatHole['shape'];
};

export type SideHole = {
  readonly side: Side | Cap;
  readonly id: string;
  readonly u: number;
  readonly v: number;
  readonly shape: FlatHole['shape'];
};
