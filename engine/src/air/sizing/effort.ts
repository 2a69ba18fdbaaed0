import type { DuctKind } from './stock.ts';

/** Per metre: fixed, and for each metre of inner perimeter. Per end and per bend, for each metre of perimeter. */
type Rate = { readonly metre: number; readonly perimeter: number; readonly end: number; readonly bend: number };

/**
 * Stand-in prices in the person's currency, wrap included. They are no offer: only their differences steer the choice,
 * and entered prices go before them. Source: `air.sizing-prices` (common practice, no source).
 */
const money: Readonly<Record<DuctKind, Rate>> = {
  flexible: { metre: 3, perimeter: 10, end: 10, bend: 0 },
  round: { metre: 6, perimeter: 22, end: 8, bend: 16 },
  rectangular: { metre: 10, perimeter: 26, end: 16, bend: 30 },
  board: { metre: 8, perimeter: 18, end: 8, bend: 14 },
};

/** Seconds of one person's work. Source: `air.sizing-labour` (common practice, no source). */
const labour: Readonly<Record<DuctKind, Rate>> = {
  flexible: { metre: 240, perimeter: 180, end: 900, bend: 120 },
  round: { metre: 600, perimeter: 400, end: 900, bend: 900 },
  rectangular: { metre: 900, perimeter: 500, end: 1200, bend: 1500 },
  board: { metre: 1200, perimeter: 700, end: 900, bend: 1800 },
};

export type Run = {
  readonly kind: DuctKind;
  readonly length: number;
  readonly perimeter: number;
  readonly bends: number;
};

const sum = (rate: Rate, { length, perimeter, bends }: Run): number =>
  length * (rate.metre + rate.perimeter * perimeter) + perimeter * (2 * rate.end + bends * rate.bend);

/** What a run costs; `metre` is an entered price of a metre, which stands in for the table's. */
export const moneyOf = (run: Run, metre?: number): number =>
  metre === undefined ? sum(money[run.kind], run) : run.length * metre + sum(money[run.kind], { ...run, length: 0 });

export const labourOf = (run: Run): number => sum(labour[run.kind], run);
