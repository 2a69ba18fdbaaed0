/** A measure of a piece as it lies, m: sideways and up from its marked corner; or a length across it. */
export type CutMeasure = {
  readonly what: string;
  readonly sideways?: number;
  readonly up?: number;
  readonly length?: number;
};
