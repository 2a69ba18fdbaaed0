import { fraction, type Seeded } from '../schedule/seeded.ts';

/**
 * Days drawn anew in blocks of neighbours (moving blocks, Künsch 1989), so that weather and habits that last stay together: as many
 * indices from 0 below `days` as there are days.
 */
export function drawDays(random: Seeded, days: number, block: number): Int32Array {
  const drawn = new Int32Array(days);
  for (let i = 0; i < days; i += block) {
    const from = Math.floor(fraction(random) * Math.max(1, days - block + 1));
    for (let k = 0; k < block && i + k < days; k++) drawn[i + k] = from + k;
  }
  return drawn;
}

/** Days in a block for so many days: the cube root, at least two. */
export const blockOf = (days: number): number => Math.max(2, Math.round(Math.cbrt(days)));
