import type { Pattern } from '../cover/pattern.ts';
import { metresOf, wholeOf } from '../whole.ts';
import type { BarJob, Sort } from './barJob.ts';

/** m from the end at which the tape is laid. */
export type CutBar = {
  readonly stock: string;
  readonly length: number;
  /** Longest first. `copy` counts the pieces of one name from 1, over all bars. */
  readonly pieces: readonly {
    readonly piece: string;
    readonly copy: number;
    readonly from: number;
    readonly length: number;
  }[];
  /** Where a cut begins; it takes the kerf from there on. */
  readonly cuts: readonly number[];
  /** What is left, with a name of its own where it is long enough to keep. */
  readonly rest: { readonly from: number; readonly length: number; readonly remnant?: string };
};

/** Bars with their pieces laid out, longest first, in the order in which they were chosen. */
export function layBars(
  { stock, kerf, remnantLeast }: BarJob,
  sorts: readonly Sort[],
  chosen: readonly Pattern[],
): CutBar[] {
  const next = sorts.map(() => 0);
  const copies = new Map<string, number>();
  const cut = wholeOf(kerf);
  let remnants = 0;
  return chosen.flatMap(({ kind, counts }): CutBar[] => {
    const s = stock[kind];
    if (!s || counts.every((n) => n === 0)) return [];
    const whole = wholeOf(s.length);
    let at = 0;
    const cuts: number[] = [];
    const pieces: { piece: string; copy: number; from: number; length: number }[] = [];
    sorts.forEach(({ length, ids }, i) => {
      for (let n = 0; n < (counts[i] ?? 0); n++) {
        const piece = ids[next[i] ?? 0] ?? '';
        next[i] = (next[i] ?? 0) + 1;
        const copy = (copies.get(piece) ?? 0) + 1;
        copies.set(piece, copy);
        pieces.push({ piece, copy, from: metresOf(at), length: metresOf(length) });
        at += length;
        if (at < whole) cuts.push(metresOf(at));
        at = Math.min(whole, at + cut);
      }
    });
    const length = metresOf(whole - at);
    const keep = length > 0 && length >= remnantLeast;
    const rest = { from: metresOf(at), length, ...(keep ? { remnant: `${s.id} rest ${++remnants}` } : {}) };
    return [{ stock: s.id, length: s.length, pieces, cuts, rest }];
  });
}
