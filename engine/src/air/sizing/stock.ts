import { inch } from '../../physics/exact.ts';
import { stockedRounds } from '../sizes.ts';

export type DuctKind = 'flexible' | 'round' | 'rectangular' | 'board';

/** Inner sizes, m. */
export type DuctShape =
  | { readonly kind: DuctKind; readonly diameter: number }
  | { readonly kind: DuctKind; readonly width: number; readonly height: number };

/** Sizes listed as to be had, and the kinds of which only those are. */
export type Stock = { readonly listed?: readonly DuctShape[]; readonly only?: readonly DuctKind[] };

const inches = (from: number, to: number): number[] =>
  Array.from({ length: (to - from) / 2 + 1 }, (_, k) => (from + 2 * k) * inch);

/** Rectangular metal in even inches, lying flat, up to 24 in wide and 16 in high; board is cut in the same steps from 8 in. */
const rectangles = (least: number): { width: number; height: number }[] =>
  inches(least, 16).flatMap((height) =>
    inches(least, 24).flatMap((width) => (width >= height ? [{ width, height }] : [])),
  );

/** The usual sizes of a kind, smallest first. Source: `air.sizes` (common practice). */
function usualSizes(kind: DuctKind): DuctShape[] {
  if (kind === 'flexible' || kind === 'round') return stockedRounds.map((diameter) => ({ kind, diameter }));
  return rectangles(kind === 'board' ? 8 : 6).map((sides) => ({ kind, ...sides }));
}

/** Every size of a kind that is to be had: the usual ones and those listed beside them, or only those listed. */
export function stockOf(kind: DuctKind, { listed = [], only = [] }: Stock = {}): DuctShape[] {
  const mine = listed.filter((x) => x.kind === kind);
  if (only.includes(kind)) return mine;
  const usual = usualSizes(kind);
  const known = new Set(usual.map(shapeId));
  return [...usual, ...mine.filter((x) => !known.has(shapeId(x)))];
}

const millimetres = (m: number): number => Math.round(m * 1000);

/** A name that stays: kind and inner size in millimetres. */
export const shapeId = (shape: DuctShape): string =>
  'diameter' in shape
    ? `${shape.kind} ${millimetres(shape.diameter)}`
    : `${shape.kind} ${millimetres(shape.width)}x${millimetres(shape.height)}`;
