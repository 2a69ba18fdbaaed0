import { type DuctPicture, lineHeight } from '@kneewall/documents';

export const pointsOf = (spots: readonly (readonly [number, number])[]): string =>
  spots.map((s) => s.join(',')).join(' ');

/** The outlines of rooms, with their names where there is room. */
export function Rooms({ picture, letters }: { picture: DuctPicture; letters: number }) {
  return (
    <g className="duct-rooms">
      {picture.rooms.map((room) => (
        <polygon key={room.id} points={pointsOf(room.corners)} />
      ))}
      {picture.roomLabels.map((l) => (
        <Words key={l.id} label={l} letters={letters} className="duct-room-name" />
      ))}
    </g>
  );
}

type DrawnDuct = DuctPicture['ducts'][number];

/** One duct: its walls, what is between them, the hardest way and the air's direction. */
export function Duct({ drawn, chosen, hard }: { drawn: DrawnDuct; chosen: boolean; hard: boolean }) {
  const { duct, way, width, arrow } = drawn;
  const points = pointsOf(way);
  const size = Math.min(6, Math.max(3, width * 0.35));
  return (
    <g className={`duct ${duct.side} ${chosen ? 'chosen' : ''}`}>
      <polyline className="duct-wall" points={points} strokeWidth={width + (chosen ? 6 : 2)} />
      <polyline className="duct-inside" points={points} strokeWidth={Math.max(1, width - 1)} />
      {hard && <polyline className="duct-hardest" points={points} />}
      <path
        className="duct-arrow"
        d="M-1 -1.2 L1.2 0 L-1 1.2 Z"
        transform={`translate(${arrow.at[0]} ${arrow.at[1]}) rotate(${arrow.turn}) scale(${size})`}
      />
    </g>
  );
}

export function HandlerName({ picture: { handler } }: { picture: DuctPicture }) {
  const [x, y] = [0, 1].map((k) => handler.reduce((sum, c) => sum + (c[k] ?? 0), 0) / Math.max(1, handler.length));
  return (
    <text className="duct-handler-name" x={x} y={(y ?? 0) + 4}>
      AH
    </text>
  );
}

type WordsProps = {
  readonly label: DuctPicture['labels'][number];
  readonly letters: number;
  readonly className: string;
};

/** A label's lines, one below the other. */
export function Words({ label, letters, className }: WordsProps) {
  const { lines, box } = label;
  return (
    <text className={className} x={box.x + box.width / 2} y={box.y}>
      {lines.map((line, i) => (
        <tspan key={line} x={box.x + box.width / 2} y={box.y + letters * (0.9 + i * lineHeight)}>
          {line}
        </tspan>
      ))}
    </text>
  );
}
