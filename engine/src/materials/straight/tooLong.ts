import type { Merged } from '../list/merged.ts';
import type { TooLong } from './result.ts';

/** Pieces that are never joined and longer than any length sold; those that are at hand in full are none of them. */
export function tooLong({ what, good, from, pieces }: Merged, lengths: readonly number[]): TooLong[] {
  const most = Math.max(0, ...lengths);
  if (good.joints !== 'none' || !pieces || !(most > 0)) return [];
  const path = from.find((x) => x.for !== undefined)?.for ?? 'work.stock';
  return pieces.flatMap(({ name, length }) =>
    length > most * (1 + 1e-9) ? [{ what, piece: name, length, most, path }] : [],
  );
}
