/**
 * A linear programme: least `cost` over columns within bounds, rows within bounds. The matrix by columns: entries of
 * column j are `starts[j]` up to `starts[j + 1]`. Every column has finite bounds, so that any prices of the rows prove a
 * bound of the least cost (see `certify`); a row may be open to one side by an infinite bound.
 */
export type LinearProgramme = {
  readonly columns: number;
  readonly rows: number;
  readonly cost: Float64Array;
  readonly lower: Float64Array;
  readonly upper: Float64Array;
  readonly rowLower: Float64Array;
  readonly rowUpper: Float64Array;
  readonly starts: Int32Array;
  readonly index: Int32Array;
  readonly value: Float64Array;
};

/** What a solver says of a programme: values of columns and prices of rows, which are worth nothing until certified. */
export type Solved =
  | { readonly status: 'optimal'; readonly values: Float64Array; readonly prices: Float64Array }
  /** Prices of rows that prove that nothing fits, where the solver gives them. */
  | { readonly status: 'infeasible'; readonly prices?: Float64Array }
  | { readonly status: 'stopped' };

/** A general solver of linear programmes; `tell` hears how many steps it took. */
export type LinearSolver = (programme: LinearProgramme, tell?: (steps: number) => void) => Solved;

/** A column's entry: a row and its coefficient. */
export type Entry = readonly [row: number, value: number];

/** Collects rows and columns. */
export type ProgrammeBuilder = {
  /** A row between two bounds, either of which may be infinite; its number. */
  readonly row: (lower: number, upper: number) => number;
  /** A column with finite bounds; its number. Entries of zero are left out. */
  readonly column: (cost: number, lower: number, upper: number, entries: readonly Entry[]) => number;
  readonly done: () => LinearProgramme;
};

export function programmeBuilder(): ProgrammeBuilder {
  const cost: number[] = [];
  const lower: number[] = [];
  const upper: number[] = [];
  const rowLower: number[] = [];
  const rowUpper: number[] = [];
  const starts: number[] = [0];
  const index: number[] = [];
  const value: number[] = [];
  return {
    row: (low, high) => {
      rowLower.push(low);
      return rowUpper.push(high) - 1;
    },
    column: (price, low, high, entries) => {
      if (!Number.isFinite(low) || !Number.isFinite(high)) throw new Error('assert: a column has finite bounds');
      cost.push(price);
      lower.push(low);
      for (const [row, coefficient] of entries) {
        if (coefficient === 0) continue;
        index.push(row);
        value.push(coefficient);
      }
      starts.push(index.length);
      return upper.push(high) - 1;
    },
    done: () => ({
      columns: cost.length,
      rows: rowLower.length,
      cost: Float64Array.from(cost),
      lower: Float64Array.from(lower),
      upper: Float64Array.from(upper),
      rowLower: Float64Array.from(rowLower),
      rowUpper: Float64Array.from(rowUpper),
      starts: Int32Array.from(starts),
      index: Int32Array.from(index),
      value: Float64Array.from(value),
    }),
  };
}

/** The programme, and the columns of each step by what they mean: -1 where there is none. */
export type DispatchProgramme = {
  readonly programme: LinearProgramme;
  readonly at: {
    readonly carried: Int32Array;
    readonly charging: Int32Array;
    readonly short: Int32Array;
    readonly stored: Int32Array;
    readonly cold: Int32Array;
    /** First and one past the last of each step's pieces of heat. */
    readonly heat: Int32Array;
  };
};

/** Rows of a step. */
export type StepRows = {
  readonly bus: number;
  readonly served: number;
  readonly stored: number;
  readonly rest: number;
};
