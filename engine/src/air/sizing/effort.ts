import type { Range } from '@kneewall/project';
import { lengthBought } from '../lengthBought.ts';
import type { PriceBook } from './priceBook.ts';
import type { DuctKind, DuctShape } from './stock.ts';

/** Seconds of one person's work: per metre, fixed and for each metre of inner perimeter; per end and bend, for each metre of perimeter. */
type Rate = { readonly metre: number; readonly perimeter: number; readonly end: number; readonly bend: number };

/** Source: `air.sizing-labour` (common practice, no source). */
const labour: Readonly<Record<DuctKind, Rate>> = {
  flexible: { metre: 240, perimeter: 180, end: 900, bend: 120 },
  round: { metre: 600, perimeter: 400, end: 900, bend: 900 },
  rectangular: { metre: 900, perimeter: 500, end: 1200, bend: 1500 },
  board: { metre: 1200, perimeter: 700, end: 900, bend: 1800 },
};

export type Run = {
  readonly shape: DuctShape;
  readonly length: number;
  readonly perimeter: number;
  readonly bends: number;
  /** Of flexible duct: the share of its length that stays slack. */
  readonly slack: number;
};

const ends = 2;

/** What a run costs: the length bought for it, two ends and its bends, each at its price. */
export function moneyOf({ shape, length, bends, slack }: Run, book: PriceBook): Range {
  const [run, end, bend] = [book.each(shape, 'run'), book.each(shape, 'end'), book.each(shape, 'bend')];
  const sum = (at: keyof Range) =>
    lengthBought(shape.kind, length, slack) * run[at] + ends * end[at] + bends * bend[at];
  return { low: sum('low'), likely: sum('likely'), high: sum('high') };
}

/** Seconds of work; an entered time for a joint stands in for the table's, at both ends and every bend. */
export function labourOf({ shape, length, perimeter, bends }: Run, joint?: Range): Range {
  const rate = labour[shape.kind];
  const along = length * (rate.metre + rate.perimeter * perimeter);
  const usual = perimeter * (ends * rate.end + bends * rate.bend);
  const sum = (at: keyof Range) => along + (joint ? (ends + bends) * joint[at] : usual);
  return { low: sum('low'), likely: sum('likely'), high: sum('high') };
}
