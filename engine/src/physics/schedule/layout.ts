/**
 * Work laid out in whole ticks, for the loops. A piece is work that nobody may break off; it starts at a tick `s` of its
 * class's table, and holds what it needs during `[s, end[s])`.
 */
export type WorkLayout = {
  /** Pieces; the last one is the end of all work: no length, after everything. */
  readonly n: number;
  /** Ticks 0 to `horizon`; `horizon + 1` stands for never. */
  readonly horizon: number;
  /** Resources, and how many units each has at most. */
  readonly m: number;
  readonly capacity: Int32Array;
  /** [m][horizon + 1]: units that are not there, or are held by what is fixed, at each tick. */
  readonly base: Int32Array;
  /** Ticks of work of each piece at full pace: its length on the clock is never shorter. */
  readonly length: Int32Array;
  readonly classes: readonly StartTable[];
  /** The table of each piece. */
  readonly table: readonly StartTable[];
  /** What piece i needs: entries needFrom[i] to needFrom[i + 1] of `needOf` (resource) and `needUnits`. */
  readonly needFrom: Int32Array;
  readonly needOf: Int32Array;
  readonly needUnits: Int32Array;
  /** What comes before and after each piece, with ticks to wait between. */
  readonly beforeFrom: Int32Array;
  readonly before: Int32Array;
  readonly beforeLag: Int32Array;
  readonly afterFrom: Int32Array;
  readonly after: Int32Array;
  readonly afterLag: Int32Array;
  /** Not before this tick. */
  readonly release: Int32Array;
  /** Done by this tick; `horizon` where there is no deadline. */
  readonly due: Int32Array;
  /** Pieces, each after all that comes before it. */
  readonly order: Int32Array;
  /** Use first where several may: more is sooner. */
  readonly priority: Float64Array;
};

/** Tables over ticks 0 to horizon + 1 for pieces of one length and one set of calendars. All rise or stand. */
export type StartTable = {
  /** The first tick from here at which such a piece may start; horizon + 1 where none is left. */
  readonly next: Int32Array;
  /** The last tick up to here at which it may start; -1 where there is none. */
  readonly prev: Int32Array;
  /** The end of one that starts at `next`. */
  readonly end: Int32Array;
  /** The first start whose end lies after this tick. */
  readonly covers: Int32Array;
};

export type LaidPiece = {
  readonly length: number;
  readonly table: StartTable;
  readonly needs: readonly { readonly of: number; readonly units: number }[];
  readonly after: readonly { readonly piece: number; readonly lag: number }[];
  readonly release?: number;
  readonly due?: number;
  readonly priority?: number;
};
