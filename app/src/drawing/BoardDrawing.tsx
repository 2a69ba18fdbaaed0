import type { MouseEventHandler } from 'react';
import { useUnits } from '../services.ts';
import { type Board, linesIn } from './board.ts';
import { type Spot, spotOf } from './corners.ts';
import type { DrawnPoints } from './usePoints.ts';

type Props = {
  readonly board: Board;
  readonly drawn: DrawnPoints;
  /** Where two sides cross that should not. */
  readonly crossing: Spot | undefined;
  readonly touch: MouseEventHandler<SVGSVGElement>;
};

/** m between the board's ruled lines. */
const ruled = { us: 4 * 0.3048, si: 1 } as const;

/** The picture below the handles: ruled lines, what else stands on the plan, and what is being drawn. */
export function BoardDrawing({ board, drawn, crossing, touch }: Props) {
  const { width, height, put, lift } = board;
  const { rooms, ways, closed } = drawn.around;
  const spots = (all: readonly Spot[]) => all.map((s) => put(s).join(',')).join(' ');
  const own = spots(drawn.points.map(spotOf));
  const [x, y] = crossing ? put(crossing) : [0, 0];
  return (
    <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true" onClick={touch}>
      <Ruled board={board} from={lift([0, height])} to={lift([width, 0])} />
      {rooms.map((r) => (
        <g key={r.id} className="board-room">
          <polygon points={spots(r.corners)} />
          <RoomName name={r.name} places={r.corners.map(put)} />
        </g>
      ))}
      {ways.map((w) => (
        <polyline key={w.id} className="board-way" points={spots(w.spots)} />
      ))}
      {closed ? <polygon className="board-own closed" points={own} /> : <polyline className="board-own" points={own} />}
      {crossing && <path className="board-crossing" d={`M${x - 9} ${y - 9} l18 18 m0 -18 l-18 18`} />}
    </svg>
  );
}

function Ruled({ board: { put, width, height }, from, to }: { board: Board; from: Spot; to: Spot }) {
  const step = ruled[useUnits()];
  return (
    <g className="board-ruled">
      {linesIn(from[0], to[0], step).map((x) => (
        <line key={x} x1={put([x, 0])[0]} x2={put([x, 0])[0]} y1={0} y2={height} />
      ))}
      {linesIn(from[1], to[1], step).map((y) => (
        <line key={y} x1={0} x2={width} y1={put([0, y])[1]} y2={put([0, y])[1]} />
      ))}
    </g>
  );
}

function RoomName({ name, places }: { name: string; places: readonly Spot[] }) {
  const middle = (k: 0 | 1) => places.reduce((sum, p) => sum + p[k], 0) / Math.max(1, places.length);
  return (
    <text x={middle(0)} y={middle(1)}>
      {name}
    </text>
  );
}
