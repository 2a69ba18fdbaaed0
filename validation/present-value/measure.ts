// Sources: uniform present value factors as tables of compound interest print them (from memory), and sums in whole numbers (computed). See README.md.
import { uniformPresentValue } from '@kneewall/engine/physics';
import { type Row, row, type ValidationSource } from '../src/row.ts';

const id = 'present-value';

/** Interest a year, years, factor as printed. */
const printed: readonly (readonly [number, number, number])[] = [
  [0.03, 10, 8.5302],
  [0.03, 15, 11.9379],
  [0.03, 20, 14.8775],
  [0.03, 25, 17.4131],
  [0.05, 10, 7.7217],
  [0.05, 20, 12.4622],
  [0.07, 10, 7.0236],
  [0.07, 20, 10.594],
  [0.1, 10, 6.1446],
  [0.1, 30, 9.4269],
];

/** Payments at each year's end, discounted one by one in fractions of whole numbers; `rate` in parts of a million. */
function summed(rate: number, years: number): number {
  const [whole, grown] = [1_000_000n, 1_000_000n + BigInt(rate)];
  let [sum, below] = [0n, 1n];
  for (let k = 0; k < years; k++) {
    sum = sum * grown + whole ** BigInt(k + 1);
    below *= grown;
  }
  const digits = 10n ** 18n;
  return Number((sum * digits) / below) / 1e18;
}

const exact: readonly (readonly [number, number])[] = [
  [0, 15],
  [1, 20],
  [100, 40],
  [30_000, 20],
  [150_000, 40],
  [-20_000, 15],
];

const measure = (): Row[] => [
  ...printed.map(([rate, years, expected]) =>
    row(
      {
        source: id,
        case: `${rate * 100} % over ${years} years, printed`,
        field: 'factor',
        unit: '',
        expected,
        tolerance: 5.1e-5,
        known: 'from memory',
      },
      uniformPresentValue(rate, years),
    ),
  ),
  ...exact.map(([parts, years]) =>
    row(
      {
        source: id,
        case: `${parts} parts of a million over ${years} years, summed`,
        field: 'factor',
        unit: '',
        expected: summed(parts, years),
        tolerance: 1e-13 * years,
        known: 'computed',
      },
      uniformPresentValue(parts / 1e6, years),
    ),
  ),
];

export const source: ValidationSource = { id, title: 'Today’s worth of yearly payments', measure };
