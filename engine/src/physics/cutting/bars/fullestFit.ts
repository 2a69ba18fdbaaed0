import type { Pattern } from '../cover/pattern.ts';
import { bestFill, fillOf } from './fill.kernel.ts';

/** Fillings looked at for one bar. */
const stepsMost = 5000;

/**
 * A plan for one stock, bar by bar: the longest piece left, and beside it what fills the bar most (Fleszar and Hindi 2002, from memory).
 * Whole lengths with the kerf added; `pieces` from the longest on, each no longer than the stock.
 */
export function fullestFit(pieces: readonly number[], demand: readonly number[], stock: number): Pattern[] {
  const left = Int32Array.from(demand);
  const scratch = fillOf(pieces.length);
  const bars: Pattern[] = [];
  for (let first = 0; first < pieces.length; first++)
    while ((left[first] ?? 0) > 0) {
      const counts = new Int32Array(pieces.length);
      counts[first] = 1;
      left[first] = (left[first] ?? 0) - 1;
      const room = stock - (pieces[first] ?? 0);
      const fitting = pieces.flatMap((size, i) => (size <= room && (left[i] ?? 0) > 0 ? [i] : []));
      scratch.n = fitting.length;
      fitting.forEach((i, k) => {
        scratch.size[k] = scratch.worth[k] = pieces[i] ?? 0;
        scratch.most[k] = left[i] ?? 0;
      });
      bestFill(scratch, room, Infinity, stepsMost);
      fitting.forEach((i, k) => {
        const take = scratch.best[k] ?? 0;
        counts[i] = (counts[i] ?? 0) + take;
        left[i] = (left[i] ?? 0) - take;
      });
      bars.push({ kind: 0, counts });
    }
  return bars;
}
