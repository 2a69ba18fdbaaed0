import { stockedRounds } from '../sizes.ts';

export type DuctKind = 'flexible' | 'round' | 'rectangular' | 'board';

/** Inner sizes, m. */
export type DuctShape =
  | { readonly kind: DuctKind; readonly diameter: number }
  | { readonly kind: DuctKind; readonly width: number; readonly height: number };

const inch = 0.0254;
const inches = (from: number, to: number): number[] =>
  Array.from({ length: (to - from) / 2 + 1 }, (_, k) => (from + 2 * k) * inch);

/** Rectangular metal in even inches, lying flat, up to 24 in wide and 16 in high; board is cut in the same steps from 8 in. */
const rectangles = (least: number): { width: number; height: number }[] =>
  inches(least, 16).flatMap((height) =>
    inches(least, 24).flatMap((width) => (width >= height ? [{ width, height }] : [])),
  );

/** Every stocked size of a kind, smallest first. Source: `air.sizes` (common practice). */
export function stockOf(kind: DuctKind): DuctShape[] {
  if (kind === 'flexible' || kind === 'round') return stockedRounds.map((diameter) => ({ kind, diameter }));
  return rectangles(kind === 'board' ? 8 : 6).map((sides) => ({ kind, ...sides }));
}

const millimetres = (m: number): number => Math.round(m * 1000);

/** A name that stays: kind and inner size in millimetres. */
export const shapeId = (shape: DuctShape): string =>
  'diameter' in shape
    ? `${shape.kind} ${millimetres(shape.diameter)}`
    : `${shape.kind} ${millimetres(shape.width)}x${millimetres(shape.height)}`;
