import type { LaidSheet } from '@kneewall/documents';
import { onSheet } from '@kneewall/engine/physics';
import { cm, PieceLines, points } from './PieceLines.tsx';

/** A sheet of stock as it is cut, to scale: pieces with their letters, folds, holes; cuts in their order; what is left. */
export function SheetPicture({ laid, chosen, title }: { laid: LaidSheet; chosen: string; title: string }) {
  const { sheet, pieces } = laid;
  const up = (y: number): number => cm(sheet.height - y);
  return (
    <svg
      className="cut-sheet"
      viewBox={`-2 -2 ${cm(sheet.width) + 4} ${cm(sheet.height) + 4}`}
      role="img"
      aria-label={`${title}: ${pieces.map((p) => `${p.mark}, ${p.title}`).join('; ')}. The table has every measure.`}
    >
      <rect x={0} y={0} width={cm(sheet.width)} height={cm(sheet.height)} className="cut-stock" />
      {sheet.rests.map((r) => (
        <rect
          key={`${r.x} ${r.y}`}
          x={cm(r.x)}
          y={up(r.y + r.height)}
          width={cm(r.width)}
          height={cm(r.height)}
          className={r.remnant === undefined ? 'cut-waste' : 'cut-keep'}
        />
      ))}
      {pieces.map(({ mark, piece, lies }) => {
        const lying = onSheet(piece, lies);
        const [x, y] = [lies.x + lies.width / 2, lies.y + lies.height / 2];
        // The corner of the rectangle about it, from which it is measured: lower right where it lies turned.
        const corner = [lies.x + (lies.turned ? lies.width : 0), lies.y] as const;
        return (
          <g key={mark} className={mark === chosen ? 'cut-piece chosen' : 'cut-piece'}>
            <polygon points={points(lying.outline, up)} />
            <PieceLines lines={lying.lines.filter((l) => l.kind !== 'centre')} up={up} />
            {lying.holes.map(({ id, centre, shape }) =>
              shape.kind === 'round' ? (
                <circle key={id} cx={cm(centre[0])} cy={up(centre[1])} r={cm(shape.diameter / 2)} />
              ) : (
                <rect
                  key={id}
                  x={cm(centre[0] - shape.width / 2)}
                  y={up(centre[1] + shape.height / 2)}
                  width={cm(shape.width)}
                  height={cm(shape.height)}
                />
              ),
            )}
            <circle cx={cm(corner[0])} cy={up(corner[1])} r={3} className="cut-corner" />
            <text x={cm(x)} y={up(y)}>
              {mark}
            </text>
          </g>
        );
      })}
      {sheet.cuts.map(({ from, to }) => (
        <line
          key={`${from.join(' ')} ${to.join(' ')}`}
          x1={cm(from[0])}
          y1={up(from[1])}
          x2={cm(to[0])}
          y2={up(to[1])}
          className="cut-through"
        />
      ))}
    </svg>
  );
}
