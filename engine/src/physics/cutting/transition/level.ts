import type { FlatLine, FlatPiece, Spot } from '../fold/pattern.ts';

/** What of a piece is turned about. */
type Loose = { readonly outline: readonly Spot[]; readonly lines: readonly FlatLine[] };

const turned =
  (c: number, s: number) =>
  ([x, y]: Spot): Spot => [x * c - y * s, x * s + y * c];

const least = (spots: readonly Spot[], k: 0 | 1): number => Math.min(...spots.map((p) => p[k]));
const most = (spots: readonly Spot[], k: 0 | 1): number => Math.max(...spots.map((p) => p[k]));

/** Moved so that the smallest rectangle about it begins at nothing. */
export function cornered({ outline, lines }: Loose): Pick<FlatPiece, 'outline' | 'lines' | 'size'> {
  const [x0, y0] = [least(outline, 0), least(outline, 1)];
  const move = ([x, y]: Spot): Spot => [x - x0, y - y0];
  return {
    outline: outline.map(move),
    lines: lines.map((l) => ({ ...l, from: move(l.from), to: move(l.to) })),
    size: { width: most(outline, 0) - x0, height: most(outline, 1) - y0 },
  };
}

/** Turned so that one of its edges is level and the rectangle about it is as small as that makes it. The first of equal ways. */
export function levelled(piece: Loose): Pick<FlatPiece, 'outline' | 'lines' | 'size'> {
  const ways = piece.outline.map((from, i) => {
    const to = piece.outline[(i + 1) % piece.outline.length] ?? from;
    const long = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
    const turn = turned((to[0] - from[0]) / long, (from[1] - to[1]) / long);
    return cornered({
      outline: piece.outline.map(turn),
      lines: piece.lines.map((l) => ({ ...l, from: turn(l.from), to: turn(l.to) })),
    });
  });
  const area = (w: (typeof ways)[number]): number => w.size.width * w.size.height;
  return ways.reduce((a, b) => (area(b) < area(a) - 1e-9 ? b : a));
}
