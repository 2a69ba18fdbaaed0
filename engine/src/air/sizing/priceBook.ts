import type { Range } from '@kneewall/project';
import { ductParts, type PartPrices } from './asked.ts';
import { geometryOf } from './geometry.ts';
import { type DuctKind, type DuctShape, shapeId } from './stock.ts';

type Part = (typeof ductParts)[number];

/** Money for a metre: fixed and for each metre of inner perimeter. For an end and a bend: for each metre of perimeter. */
type Rate = { readonly metre: number; readonly perimeter: number; readonly end: number; readonly bend: number };

/**
 * Stand-in prices in the person's currency, wrap included. They are no offer: only their differences steer the choice,
 * and entered prices go before them. Source: `air.sizing-prices` (common practice, no source).
 */
const standIns: Readonly<Record<DuctKind, Rate>> = {
  flexible: { metre: 3, perimeter: 10, end: 10, bend: 0 },
  round: { metre: 6, perimeter: 22, end: 8, bend: 16 },
  rectangular: { metre: 10, perimeter: 26, end: 16, bend: 30 },
  board: { metre: 8, perimeter: 18, end: 8, bend: 14 },
};

function standIn(shape: DuctShape, part: Part): number {
  const rate = standIns[shape.kind];
  const { perimeter } = geometryOf(shape);
  return part === 'run' ? rate.metre + rate.perimeter * perimeter : rate[part] * perimeter;
}

export type PriceBook = {
  /** Money for a metre, an end or a bend of a duct. */
  readonly each: (shape: DuctShape, part: Part) => Range;
  /** Whether the duct itself has a price of its own that was entered. */
  readonly entered: (shape: DuctShape) => boolean;
};

/**
 * Entered prices, by kind and size; what has none takes the stand-in, in proportion to what is entered of its kind and
 * part, so that an unpriced size is not taken for a bargain. Source: `air.sizing-prices`.
 */
export function priceBook(prices: Readonly<Record<string, PartPrices>>, shapes: readonly DuctShape[]): PriceBook {
  const known = shapes.filter((s) => prices[shapeId(s)] !== undefined);
  const share = (kind: DuctKind, part: Part): number => {
    let [entered, usual] = [0, 0];
    for (const s of known) {
      const price = s.kind === kind ? prices[shapeId(s)]?.[part] : undefined;
      if (!price) continue;
      entered += price.likely;
      usual += standIn(s, part);
    }
    return entered > 0 && usual > 0 ? entered / usual : 1;
  };
  const shares = Object.fromEntries(
    (Object.keys(standIns) as DuctKind[]).map((kind) => [
      kind,
      Object.fromEntries(ductParts.map((part) => [part, share(kind, part)])),
    ]),
  ) as Record<DuctKind, Record<Part, number>>;
  return {
    each: (shape, part) => {
      const price = prices[shapeId(shape)]?.[part];
      if (price) return price;
      const likely = standIn(shape, part) * shares[shape.kind][part];
      return { low: likely, likely, high: likely };
    },
    entered: (shape) => prices[shapeId(shape)]?.run !== undefined,
  };
}
