import type { Asking, Pattern, PatternOracle } from '../cover/pattern.ts';
import { bestFill, fillOf } from './fill.kernel.ts';

/** Whole lengths, the kerf added to pieces and stock alike: k pieces need k - 1 cuts, and one more where something is left. */
export type BarLengths = { readonly pieces: readonly number[]; readonly stock: readonly number[] };

const stepsMost = 200_000;
const patternsMost = 4000;
const visitsMost = 200_000;

/** Patterns of a bar: pieces one after the other. */
export function barOracle({ pieces, stock }: BarLengths): PatternOracle {
  const scratch = fillOf(pieces.length);
  const best: PatternOracle['best'] = (kind, { prices, wanted }, floor) => {
    const capacity = stock[kind] ?? 0;
    const priceOf = (i: number) => prices[i] ?? 0;
    const sizeOf = (i: number) => pieces[i] ?? 0;
    const order = pieces
      .flatMap((size, i) => (size <= capacity && (wanted[i] ?? 0) > 0 && priceOf(i) > 1e-12 ? [i] : []))
      .sort((a, b) => priceOf(b) / sizeOf(b) - priceOf(a) / sizeOf(a) || a - b);
    scratch.n = order.length;
    order.forEach((i, k) => {
      scratch.size[k] = sizeOf(i);
      scratch.worth[k] = priceOf(i);
      scratch.most[k] = wanted[i] ?? 0;
    });
    const worth = bestFill(scratch, capacity, floor, stepsMost);
    if (worth <= floor) return { patterns: [], upper: scratch.upper };
    const counts = new Int32Array(pieces.length);
    order.forEach((i, k) => {
      counts[i] = scratch.best[k] ?? 0;
    });
    return { patterns: [{ kind, counts }], upper: scratch.upper };
  };
  return { best, all: (kind, piece, asking, floor) => allWith({ pieces, stock }, kind, piece, asking, floor) };
}

/** Every filling with that piece to which nothing more can be added, longest pieces first. */
function allWith(lengths: BarLengths, kind: number, piece: number, asking: Asking, floor: number) {
  const { pieces, stock } = lengths;
  const size = (i: number) => pieces[i] ?? 0;
  const price = (i: number) => asking.prices[i] ?? 0;
  const order = pieces.map((_, i) => i).filter((i) => (asking.wanted[i] ?? 0) > 0);
  order.sort((a, b) => size(b) - size(a) || a - b);
  // What a unit of length can earn from this place in the order on.
  const density = order.map((i) => price(i) / size(i));
  for (let k = density.length - 2; k >= 0; k--) density[k] = Math.max(density[k] ?? 0, density[k + 1] ?? 0);
  const patterns: Pattern[] = [];
  const counts = new Int32Array(pieces.length);
  let visits = 0;
  const visit = (k: number, left: number, worth: number): void => {
    if (visits++ > visitsMost || patterns.length > patternsMost) return;
    const i = order[k];
    if (i === undefined) {
      const more = order.some((j) => size(j) <= left && (counts[j] ?? 0) < (asking.wanted[j] ?? 0));
      if (!more && worth >= floor) patterns.push({ kind, counts: counts.slice() });
      return;
    }
    if (worth + left * (density[k] ?? 0) < floor) return;
    const least = counts[i] ?? 0;
    const most = Math.min((asking.wanted[i] ?? 0) - least, Math.floor(left / size(i)));
    for (let n = most; n >= 0; n--) {
      counts[i] = least + n;
      visit(k + 1, left - n * size(i), worth + n * price(i));
    }
    counts[i] = least;
  };
  const capacity = stock[kind] ?? 0;
  if (size(piece) > capacity) return { patterns, whole: true };
  counts[piece] = 1;
  visit(0, capacity - size(piece), price(piece));
  return { patterns, whole: visits <= visitsMost && patterns.length <= patternsMost };
}
