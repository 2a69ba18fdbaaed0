import type { CutPiece } from './cut.ts';
import type { CutMeasure } from './cutMeasure.ts';
import type { MarkedPiece } from './laidSheets.ts';
import { isShaped, shapedMeasures } from './shaped.ts';

type Line = CutPiece['lines'][number];

const upright = (l: Line): boolean => l.from[0] === l.to[0];
const level = (l: Line): boolean => l.from[1] === l.to[1];

/** What a line is for: grooves and bends fold; of laps the last upright one of a box is where the bare facing begins. */
export function lineWord(piece: CutPiece, line: Line): string {
  if (line.kind === 'groove' || line.kind === 'fold') return 'fold';
  if (line.kind === 'lap' && isFlap(piece, line)) return 'flap';
  return line.kind;
}

function isFlap(piece: CutPiece, line: Line): boolean {
  const folded = piece.panels[0]?.name !== 'cap';
  const laps = piece.lines.filter((l) => l.kind === 'lap' && upright(l)).map((l) => l.from[0]);
  return folded && laps.length > 2 && upright(line) && line.from[0] === Math.max(...laps);
}

const lineNames: Readonly<Record<string, string>> = {
  fold: 'Fold, middle of the groove',
  lap: 'Lap, half the board',
  flap: 'Flap, bare facing from here',
};

/** Everything to mark out on a piece but its holes: its size, the diagonal that proves it square, folds and laps. */
export function cutMeasures({ piece, lies }: Pick<MarkedPiece, 'piece' | 'lies'>): CutMeasure[] {
  if (isShaped(piece)) return shapedMeasures({ piece, lies });
  const metal = piece.lines.some((l) => l.kind === 'fold');
  const named = (l: Line) => (metal ? 'Bend, its middle' : (lineNames[lineWord(piece, l)] ?? l.kind));
  const lines = piece.lines.filter((l) => l.kind !== 'centre');
  const along = (of: (l: Line) => boolean, axis: 0 | 1): CutMeasure[] =>
    lines
      .filter(of)
      .sort((a, b) => a.from[axis] - b.from[axis])
      // Lying turned, what goes across the piece goes up the sheet.
      .map((l) => ({ what: named(l), [(axis === 0) !== lies.turned ? 'sideways' : 'up']: l.from[axis] }));
  return [
    { what: 'Whole piece', sideways: lies.width, up: lies.height },
    { what: 'Corner to corner, to prove it square', length: Math.hypot(lies.width, lies.height) },
    ...along(upright, 0),
    ...along(level, 1),
  ];
}
