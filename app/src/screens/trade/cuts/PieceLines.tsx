import type { FlatPiece } from '@kneewall/engine/physics';

/** Pictures of cutting are drawn in centimetres, to the millimetre. */
export const cm = (m: number): number => Math.round(m * 1000) / 10;

/** Corners as an SVG takes them; `up` is the picture's height of a height on the sheet. */
export const points = (spots: readonly (readonly [number, number])[], up: (y: number) => number): string =>
  spots.map(([x, y]) => `${cm(x)},${up(y)}`).join(' ');

/** The laps and folds of a piece as it lies. */
export const PieceLines = ({ lines, up }: { lines: FlatPiece['lines']; up: (y: number) => number }) =>
  lines.map((l) => (
    <line
      key={`${l.kind} ${l.from.join(' ')} ${l.to.join(' ')}`}
      x1={cm(l.from[0])}
      y1={up(l.from[1])}
      x2={cm(l.to[0])}
      y2={up(l.to[1])}
      className={l.kind === 'lap' ? 'cut-lap' : 'cut-fold'}
    />
  ));
