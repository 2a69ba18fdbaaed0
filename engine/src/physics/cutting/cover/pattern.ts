/** What is cut from one piece of stock: its kind, and how many of each piece. */
export type Pattern = { readonly kind: number; readonly counts: Int32Array };

/** A kind of stock: what one costs, and how many there are; `Infinity` where they can be bought. */
export type StockKind = { readonly cost: number; readonly count: number };

/** Worth of each piece at the prices of the moment, and how many are still wanted. */
export type Asking = { readonly prices: Float64Array; readonly wanted: Int32Array };

/** Knows what can be cut from one piece of stock: from a bar, or from a sheet by cuts that go through. */
export type PatternOracle = {
  /** Patterns worth more than `floor`, the best last; and what no pattern is worth more than. */
  readonly best: (kind: number, asking: Asking, floor: number) => { patterns: Pattern[]; upper: number };
  /** All patterns to which nothing can be added, with that piece, worth at least `floor`; not `whole` where it stopped. */
  readonly all: (kind: number, piece: number, asking: Asking, floor: number) => { patterns: Pattern[]; whole: boolean };
};

export type CoverSpec = {
  readonly demand: Int32Array;
  readonly kinds: readonly StockKind[];
  /** The pieces by how hard they are to place, the hardest first. */
  readonly hardest: readonly number[];
  readonly oracle: PatternOracle;
  /** Patterns known beforehand. */
  readonly pool: readonly Pattern[];
  /** A cover known beforehand, and a bound known beforehand. */
  readonly start: readonly Pattern[] | undefined;
  readonly bound: number;
  readonly nodesMost: number;
  /** The programme is priced out even where the plan is proved without it. */
  readonly linearToo: boolean;
};

export type Cover = {
  readonly chosen: readonly Pattern[];
  /** Of each piece, how many found no stock. */
  readonly leftOut: Int32Array;
  readonly cost: number;
  /** No cover costs less; rounded up to what costs can be. */
  readonly bound: number;
  /** Cost of the linear programme over all patterns, where it was priced out: a bound before rounding. */
  readonly linear: number | undefined;
  readonly proved: boolean;
  readonly nodes: number;
};

/** Tells patterns apart. */
export const keyOf = ({ kind, counts }: Pattern): string => `${kind}:${counts.join()}`;
