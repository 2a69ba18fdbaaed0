import { inch } from '../physics/exact.ts';

/** Round sizes that shops stock, m: 4 to 20 in. Source: `air.sizes` (common practice). */
export const stockedRounds: readonly number[] = [4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20].map(
  (inches) => inches * inch,
);
