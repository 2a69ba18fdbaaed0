/** How a value is known, in the words of the checks: never stronger than it is. */
export type How = 'looked up' | 'computed' | 'from memory' | 'common practice';

/** One check: ours against what is expected, or against a range. */
export type Row = {
  readonly source: string;
  readonly case: string;
  readonly field: string;
  readonly unit: string;
  readonly expected?: number;
  readonly low?: number;
  readonly high?: number;
  readonly ours: number;
  /** Ours less expected, or the distance outside the range. */
  readonly error: number;
  /** Absolute, in the unit. */
  readonly tolerance: number;
  readonly known: How;
  readonly ok: boolean;
};

export type Truth = Omit<Row, 'ours' | 'error' | 'ok'>;

/** Holds our value against the truth. Anything that is not a number is not ok. */
export function row(truth: Truth, ours: number): Row {
  const error =
    truth.expected !== undefined
      ? ours - truth.expected
      : outside(ours, truth.low ?? -Infinity, truth.high ?? Infinity);
  return { ...truth, ours, error, ok: Math.abs(error) <= truth.tolerance };
}

const outside = (x: number, low: number, high: number): number =>
  Number.isNaN(x) || x < low ? x - low : x > high ? x - high : 0;

/** A folder of checks against one published source. */
export type ValidationSource = {
  readonly id: string;
  readonly title: string;
  readonly measure: () => Row[];
  /** Rows of a case file: what its JSON holds, or the text of any other; the folder that its paths are relative to; its name. */
  readonly measureCase?: (file: unknown, folder: string, name?: string) => Row[];
};
