import type { CutPiece } from './cut.ts';
import type { CutMeasure } from './cutMeasure.ts';
import type { MarkedPiece } from './laidSheets.ts';

type Spot = CutPiece['outline'][number];

/** Whether a piece is cut out of the rectangle it lies in along slanting lines. */
export const isShaped = ({ outline, size }: Pick<CutPiece, 'outline' | 'size'>): boolean =>
  outline.some(([x, y]) => !(onEdge(x, size.width) && onEdge(y, size.height)));

const onEdge = (at: number, size: number): boolean => Math.abs(at) < 1e-6 || Math.abs(at - size) < 1e-6;

type Marked = Pick<MarkedPiece, 'piece' | 'lies'>;

/** As it lies: sideways and up from the marked corner of its rectangle. */
const lyingAt = ({ lies }: Marked, [x, y]: Spot): { readonly sideways: number; readonly up: number } =>
  lies.turned ? { sideways: y, up: x } : { sideways: x, up: y };

/** Corners of a shaped piece in order round it, numbered from 1, as they are marked out. */
export const cornersOf = (marked: Marked): readonly { readonly sideways: number; readonly up: number }[] =>
  marked.piece.outline.map((spot) => lyingAt(marked, spot));

const apart = (a: Spot, b: Spot): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** Everything to mark out on a shaped piece: the rectangle first, its corners in it, then bends from corner to corner and laps by both ends. */
export function shapedMeasures(marked: Marked): CutMeasure[] {
  const { piece, lies } = marked;
  const numberOf = (spot: Spot): number => 1 + piece.outline.findIndex((p) => apart(p, spot) < 1e-6);
  const laps = piece.lines.filter((l) => l.kind === 'lap');
  const ofBoard = piece.panels.length > 0;
  return [
    { what: 'Rectangle about it', sideways: lies.width, up: lies.height },
    { what: 'Corner to corner of it, to prove it square', length: Math.hypot(lies.width, lies.height) },
    ...cornersOf(marked).map((at, i) => ({ what: `Corner ${i + 1}`, ...at })),
    ...piece.lines.flatMap((l): CutMeasure[] => {
      const word = l.kind === 'fold' ? 'bend, its middle' : 'seam lap, bent over';
      if (!ofBoard)
        return [
          { what: `Corner ${numberOf(l.from)} to corner ${numberOf(l.to)}: ${word}`, length: apart(l.from, l.to) },
        ];
      const name = l === laps.at(-1) ? 'Flap, bare facing from here' : 'Lap, half the board';
      return [
        { what: `${name}: at the unit’s end`, ...lyingAt(marked, l.from) },
        { what: `${name}: at the duct’s end`, ...lyingAt(marked, l.to) },
      ];
    }),
  ];
}
