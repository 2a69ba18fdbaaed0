import { type DuctLayout, type DuctPicture, lineHeight, pictureOf } from '@kneewall/documents';
import { type MouseEvent, useMemo } from 'react';
import { useRoom } from '../../../look/useRoom.ts';
import { useUnits } from '../../../services.ts';
import { nearestDuct } from './nearestDuct.ts';
import { Scale } from './PlanScale.tsx';
import { faceTexts, textsFor } from './planTexts.ts';

type Props = {
  readonly layout: DuctLayout;
  readonly north: number | undefined;
  readonly chosen: string | undefined;
  readonly hardest: ReadonlySet<string>;
  readonly pick: (id: string) => void;
};

/** Room round the house for labels, px. */
const rim = { across: 12, along: 32 };

/** The ducts from above, one pixel of the picture a pixel of the screen, so that its words stay readable. */
export function DuctPlan({ layout, north, chosen, hardest, pick }: Props) {
  const [ref, { width, em }] = useRoom<HTMLElement>();
  const letters = 0.75 * em;
  const units = useUnits();
  const { box, scaled } = layout;
  const wide = Math.max(0.1, box.right - box.left);
  const perMetre = Math.max(0, width - 2 * rim.across) / wide;
  const height = (box.top - box.bottom) * perMetre + 2 * rim.along;
  const picture = useMemo(
    () =>
      width === 0
        ? undefined
        : pictureOf(layout, {
            field: { x: 0, y: 0, width, height },
            perMetre,
            letters,
            mark: 0.62 * em,
            widthLeast: 5,
            ductTexts: textsFor(width, units),
            faceTexts: faceTexts(width, units),
          }),
    [layout, width, height, perMetre, units, em, letters],
  );
  const choose = (event: MouseEvent<SVGSVGElement>) => {
    const at = event.currentTarget.getBoundingClientRect();
    const found = picture && nearestDuct(picture, [event.clientX - at.left, event.clientY - at.top]);
    if (found !== undefined) pick(found);
  };
  return (
    <figure className="duct-plan" ref={ref}>
      {picture && (
        <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true" onClick={choose}>
          <Rooms picture={picture} letters={letters} />
          {picture.ducts.map((d) => (
            <Duct key={d.duct.id} drawn={d} chosen={d.duct.id === chosen} hard={hardest.has(d.duct.id)} />
          ))}
          <polygon className="duct-handler" points={pointsOf(picture.handler)} />
          <HandlerName picture={picture} />
          {picture.faces.map(({ face, box: b }) => (
            <g key={face.id} className="duct-face">
              <rect x={b.x} y={b.y} width={b.width} height={b.height} />
              <text x={b.x + b.width / 2} y={b.y + b.height / 2 + letters / 3}>
                {face.tag}
              </text>
            </g>
          ))}
          {picture.labels.map((l) => (
            <Words
              key={l.id}
              label={l}
              letters={letters}
              className={l.id === chosen ? 'duct-label chosen' : 'duct-label'}
            />
          ))}
          {scaled && <Scale width={width} height={height} perMetre={perMetre} north={north} />}
        </svg>
      )}
    </figure>
  );
}

const pointsOf = (spots: readonly (readonly [number, number])[]): string => spots.map((s) => s.join(',')).join(' ');

function Rooms({ picture, letters }: { picture: DuctPicture; letters: number }) {
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

function Duct({ drawn, chosen, hard }: { drawn: DrawnDuct; chosen: boolean; hard: boolean }) {
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

function HandlerName({ picture: { handler } }: { picture: DuctPicture }) {
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

function Words({ label, letters, className }: WordsProps) {
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
