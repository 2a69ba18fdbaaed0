/** m; `count` pieces of that length. */
export type BarPiece = { readonly id: string; readonly length: number; readonly count: number };

/** m; `cost` of one, 1 where it is left out, so that the fewest are cut; `count` on hand, or as many as it takes. */
export type BarStock = {
  readonly id: string;
  readonly length: number;
  readonly cost?: number;
  readonly count?: number;
};

/** m. `kerf`: what a cut takes; `remnantLeast`: what is left is kept from this length on. */
export type BarJob = {
  readonly pieces: readonly BarPiece[];
  readonly stock: readonly BarStock[];
  readonly kerf: number;
  readonly remnantLeast: number;
  /** Nodes of the search at most; 2000 where it is left out, fewer for more than a hundred lengths. */
  readonly nodesMost?: number;
  /** Asks for `linear` even where the plan is proved without it. */
  readonly linearToo?: boolean;
};

/** Pieces of one length, whoever asked for them. */
export type Sort = { readonly length: number; readonly ids: readonly string[] };
