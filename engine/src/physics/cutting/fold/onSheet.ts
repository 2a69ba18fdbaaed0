import type { CutSheet } from '../sheets/sheetJob.ts';
import type { FlatPiece, Spot } from './pattern.ts';

/** What of a flat piece is drawn again where it lies on its sheet. */
export type LyingPiece = Pick<FlatPiece, 'id' | 'outline' | 'lines' | 'holes'>;

/**
 * A flat piece where it was placed on a sheet, in the sheet's metres: a quarter turn to the left where it was turned, never
 * mirrored. `placed` is one of the sheet's own.
 */
export function onSheet(piece: FlatPiece, placed: CutSheet['placed'][number]): LyingPiece {
  const move = ([x, y]: Spot): Spot =>
    placed.turned ? [placed.x + piece.size.height - y, placed.y + x] : [placed.x + x, placed.y + y];
  return {
    id: piece.id,
    outline: piece.outline.map(move),
    lines: piece.lines.map((l) => ({ ...l, from: move(l.from), to: move(l.to) })),
    holes: piece.holes.map(({ id, centre, shape }) => ({
      id,
      centre: move(centre),
      shape:
        placed.turned && shape.kind === 'rectangle'
          ? { kind: 'rectangle', width: shape.height, height: shape.width }
          : shape,
    })),
  };
}
