import type { CutPiece } from './laidSheets.ts';

/** A measure of a piece, m: `x` from its marked corner to the right, `y` upward, `size` of what is there. */
export type CutMeasure = {
  readonly what: string;
  readonly x?: number;
  readonly y?: number;
  readonly size?: string;
  readonly length?: number;
};

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

/** Everything to mark out on a piece, from its corner: its size, the diagonal that proves it square, lines, holes. */
export function cutMeasures(piece: CutPiece): CutMeasure[] {
  const { width, height } = piece.size;
  const marked = piece.lines.filter((l) => l.kind !== 'centre');
  const metal = piece.lines.some((l) => l.kind === 'fold');
  const named = (l: Line) => (metal ? 'Bend, its middle' : (lineNames[lineWord(piece, l)] ?? l.kind));
  return [
    { what: 'Whole piece', x: width, y: height },
    { what: 'Corner to corner, to prove it square', length: Math.hypot(width, height) },
    ...marked
      .filter(upright)
      .sort((a, b) => a.from[0] - b.from[0])
      .map((l) => ({ what: named(l), x: l.from[0] })),
    ...marked
      .filter(level)
      .sort((a, b) => a.from[1] - b.from[1])
      .map((l) => ({ what: named(l), y: l.from[1] })),
  ];
}
