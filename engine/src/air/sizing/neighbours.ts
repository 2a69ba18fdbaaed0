import { stockedRounds } from '../sizes.ts';
import { type DuctShape, stockOf } from './stock.ts';

export type Neighbours = { readonly smaller?: DuctShape; readonly larger?: DuctShape };

/** m by which two sizes may differ and still be the same. */
const same = 5e-4;

/**
 * The stocked sizes next to one, of the same kind: diameters for what is round; for the others widths at the same
 * height, and cross-sections where no stocked one has that height. Source: `air.sizes` (common practice).
 */
export function stockedNeighbours(shape: DuctShape): Neighbours {
  const { kind } = shape;
  if ('diameter' in shape) {
    const rounds = stockedRounds.map((diameter): DuctShape => ({ kind, diameter }));
    return around(rounds, (s) => ('diameter' in s ? s.diameter : 0), shape.diameter, same);
  }
  const { width, height } = shape;
  const sides = stockOf(kind).flatMap((s) => ('diameter' in s ? [] : [s]));
  const widthOf = (s: DuctShape): number => ('diameter' in s ? s.diameter : s.width);
  const areaOf = (s: DuctShape): number => ('diameter' in s ? s.diameter ** 2 : s.width * s.height);
  const level = sides.filter((s) => Math.abs(s.height - height) < same);
  return {
    ...around(
      [...sides].sort((a, b) => areaOf(a) - areaOf(b)),
      areaOf,
      width * height,
      same * same,
    ),
    ...around(level, widthOf, width, same),
  };
}

/** The last of a rising list below a measure and the first above it. */
function around(
  rising: readonly DuctShape[],
  measure: (s: DuctShape) => number,
  at: number,
  slack: number,
): Neighbours {
  const smaller = rising.findLast((s) => measure(s) < at - slack);
  const larger = rising.find((s) => measure(s) > at + slack);
  return { ...(smaller ? { smaller } : {}), ...(larger ? { larger } : {}) };
}
