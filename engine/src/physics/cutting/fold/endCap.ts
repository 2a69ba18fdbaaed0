import type { Board } from './board.ts';
import type { SideHole } from './boardBox.ts';
import { centreLines, type FlatHole, type FlatPiece, measure, reachOf, rectangle } from './pattern.ts';

/**
 * A cap that closes an end: as large as the duct outside, half a board cut away all round to the board's thickness, so that
 * the rest plugs in. Seen from within. Source: `cutting.cap`.
 */
export function endCap(
  id: string,
  inside: { readonly width: number; readonly height: number },
  board: Board,
  openings: readonly SideHole[],
): FlatPiece {
  const t = board.thickness;
  const holes = openings.map(({ id: name, u, v, shape }): FlatHole => ({ id: name, centre: [t + u, t + v], shape }));
  const [w, h] = [inside.width + 2 * t, inside.height + 2 * t];
  return {
    id,
    outline: rectangle(w, h),
    size: { width: w, height: h },
    lines: [
      { kind: 'lap', from: [t, 0], to: [t, h] },
      { kind: 'lap', from: [w - t, 0], to: [w - t, h] },
      { kind: 'lap', from: [0, t], to: [w, t] },
      { kind: 'lap', from: [0, h - t], to: [w, h - t] },
      ...holes.flatMap((o) => centreLines(o.centre, Math.max(reachOf(o).x, reachOf(o).y) + 0.02)),
    ],
    holes,
    panels: [{ name: 'cap', from: [0, 0], to: [w, h], inside: { from: [t, t], to: [w - t, h - t] } }],
    measures: [measure([0, 0], [w, 0], 'whole'), measure([0, 0], [0, h], 'whole'), measure([0, 0], [w, h], 'check')],
  };
}
