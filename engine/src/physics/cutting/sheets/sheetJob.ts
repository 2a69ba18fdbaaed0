import type { CutProblem } from '../problem.ts';
import type { Rect, ThroughCut } from './layout.ts';

/** m; `turns` where it may be laid either way, which a facing or a grain can forbid. */
export type SheetPiece = {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly count: number;
  readonly turns: boolean;
};

/** m; `cost` of one, 1 where it is left out, so that the fewest sheets are used; `count` on hand, or as many as it takes. */
export type SheetStock = {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly cost?: number;
  readonly count?: number;
};

/** m. `kerf`: what a cut takes; `trim`: taken off all four edges first; rests with both sides that long are kept. */
export type SheetJob = {
  readonly pieces: readonly SheetPiece[];
  readonly stock: readonly SheetStock[];
  readonly kerf: number;
  readonly trim: number;
  readonly remnantLeast: number;
  /** How long the search may be, in counts: boxes joined and nodes. 5,000,000 and 400 where it is left out. */
  readonly effort?: { readonly joins: number; readonly nodes: number };
  /** Asks for `linear` even where the plan is proved without it. */
  readonly linearToo?: boolean;
};

/** One sheet as it is cut. Places in m from the lower left corner as `width` runs to the right. */
export type CutSheet = {
  readonly stock: string;
  readonly width: number;
  readonly height: number;
  /** `copy` counts the pieces of one name from 1, over all sheets; `width` and `height` as they lie. */
  readonly placed: readonly (Rect & { readonly piece: string; readonly copy: number; readonly turned: boolean })[];
  /** In the order in which they are made: each goes right through the part that it is in. */
  readonly cuts: readonly ThroughCut[];
  /** What is left: with a name where it is large enough to keep. */
  readonly rests: readonly (Rect & { readonly remnant?: string })[];
  /** Share of the sheet that became pieces. */
  readonly used: number;
};

export type SheetPlan = {
  readonly sheets: readonly CutSheet[];
  readonly leftOut: readonly { readonly piece: string; readonly copies: number }[];
  /** Cost of the stock, or sheets; and what no plan by through cuts costs less than. */
  readonly cost: number;
  readonly bound: number;
  /** The bound of the linear programme over all patterns before rounding up, where it was priced out. */
  readonly linear?: number;
  readonly proved: boolean;
  readonly nodes: number;
  /** Boxes of pieces that were joined: the work done. */
  readonly joins: number;
  readonly problems: readonly CutProblem[];
};
