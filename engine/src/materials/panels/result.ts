import type { SheetsOf } from '../cutting/result.ts';

/** Pieces of plywood of one thing, laid on whole sheets and on what is at hand; ids of pieces and of what is at hand by their names. m. */
export type PanelPlan = SheetsOf & {
  /** The line of the list that they are for. */
  readonly id: string;
  readonly names: Readonly<Record<string, string>>;
};
