import type { BarPlan } from '../../physics/cutting/index.ts';

/** Straight pieces of one thing, laid on lengths as they are sold and on what is at hand; ids of pieces by their names. m. */
export type StraightPlan = {
  /** The line of the list that they are for. */
  readonly id: string;
  readonly what: string;
  readonly plan: BarPlan;
  readonly names: Readonly<Record<string, string>>;
  /** Lengths of the shop by their id in the plan; what is not here is at hand. */
  readonly sold: Readonly<Record<string, number>>;
};

/** m. A piece that is never joined and longer than the longest length sold of `what`; the document entry it is for. */
export type TooLong = {
  readonly what: string;
  readonly piece: string;
  readonly length: number;
  readonly most: number;
  readonly path: string;
};
