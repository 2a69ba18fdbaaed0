import { bestCut } from './bestCut.kernel.ts';

/** Lengths in any one unit, whole. */
export type ValuedPiece = {
  readonly width: number;
  readonly height: number;
  readonly value: number;
  readonly turns: boolean;
};

/** Every sum of sides, with the kerf after each, up to the whole: all places where a cut can be needed. */
function placesOf(sides: readonly number[], whole: number, kerf: number): Float64Array {
  const met = new Set<number>([0]);
  const open = [0];
  for (let at = open.pop(); at !== undefined; at = open.pop())
    for (const side of sides) {
      const next = at === 0 ? side : at + kerf + side;
      if (next <= whole && !met.has(next)) {
        met.add(next);
        open.push(next);
      }
    }
  return Float64Array.from(met).sort();
}

/**
 * The most value that through cuts free from one sheet when there is no end of each piece: exact, any number of stages.
 * Whole lengths of one unit. Source: `cutting.cover`.
 */
export function bestOfSheet(pieces: readonly ValuedPiece[], width: number, height: number, kerf: number): number {
  const ways = pieces.flatMap((p) => [
    { w: p.width, h: p.height, value: p.value },
    ...(p.turns ? [{ w: p.height, h: p.width, value: p.value }] : []),
  ]);
  const fit = ways.filter((p) => p.w > 0 && p.h > 0 && p.w <= width && p.h <= height);
  const xs = placesOf([...new Set(fit.map((p) => p.w))], width, kerf);
  const ys = placesOf([...new Set(fit.map((p) => p.h))], height, kerf);
  const value = new Float64Array(xs.length * ys.length);
  fit.forEach((p) => {
    for (let i = 0; i < xs.length; i++)
      for (let j = 0; j < ys.length; j++)
        if (p.w <= (xs[i] ?? 0) && p.h <= (ys[j] ?? 0))
          value[i * ys.length + j] = Math.max(value[i * ys.length + j] ?? 0, p.value);
  });
  bestCut({ xs, ys, value, kerf });
  return value[value.length - 1] ?? 0;
}
