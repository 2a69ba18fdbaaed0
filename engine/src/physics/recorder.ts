/**
 * Takes down a calculation as it runs. It returns nothing, so no number can depend on it. `formula` is arithmetic on
 * the named inputs (see formula.ts) or one of the words `table` and `solved`.
 */
export type Recorder = {
  step(
    symbol: string,
    formula: string,
    inputs: Readonly<Record<string, number>>,
    value: number,
    unit: string,
    source: string,
  ): void;
};
