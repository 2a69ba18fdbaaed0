import { cornersOf, isShaped, type MarkedPiece } from '@kneewall/documents';
import { onSheet } from '@kneewall/engine/physics';
import { cm, PieceLines, points } from './PieceLines.tsx';

/** Numbers and dot, as a share of the picture's longer side; more corners than these would run into each other. */
const letters = 0.055;
const numbered = 14;

/** A piece that is cut along slanting lines, by itself: its corners by number, as the table has them. Nothing for others. */
export function PiecePicture({ marked }: { marked: MarkedPiece }) {
  const { piece, lies, mark, title } = marked;
  if (!isShaped(piece)) return null;
  const lying = onSheet(piece, { ...lies, x: 0, y: 0 });
  const [width, height] = [cm(lies.width), cm(lies.height)];
  const up = (y: number): number => height - cm(y);
  const size = letters * Math.max(width, height);
  const corners = cornersOf(marked);
  // From the marked corner, which lies at the lower right where the piece is turned.
  const at = ({ sideways, up: y }: (typeof corners)[number]): readonly [number, number] => [
    lies.turned ? width - cm(sideways) : cm(sideways),
    up(y),
  ];
  const middle = [width / 2, height / 2] as const;
  return (
    <svg
      className="cut-sheet cut-alone"
      viewBox={[-size, -size, width + 2 * size, height + 2 * size].map((n) => n.toFixed(1)).join(' ')}
      role="img"
      aria-label={`${mark}, ${title}, with its corners by number. The table has their places.`}
    >
      <rect x={0} y={0} width={width} height={height} className="cut-waste" />
      <polygon points={points(lying.outline, up)} />
      <PieceLines lines={lying.lines} up={up} />
      <circle cx={lies.turned ? width : 0} cy={height} r={size / 4} className="cut-corner" />
      {corners.length <= numbered &&
        corners.map((corner, i) => {
          const [x, y] = at(corner);
          const away = Math.hypot(middle[0] - x, middle[1] - y) || 1;
          const inward = (0.9 * size) / away;
          return (
            <text
              key={`${x} ${y}`}
              x={x + inward * (middle[0] - x)}
              y={y + inward * (middle[1] - y)}
              style={{ fontSize: `${(0.9 * size).toFixed(1)}px` }}
            >
              {i + 1}
            </text>
          );
        })}
    </svg>
  );
}
