import type { TradeResults } from '@kneewall/engine';
import type { ReactNode } from 'react';
import { useRoom } from '../../../look/useRoom.ts';
import { letterOf, patternId, ReachPatterns } from './ReachPatterns.tsx';
import { regionPath, roomiest } from './reachShapes.ts';

type Maps = Extract<TradeResults['lineset']['maps'], { ok: true }>['value'];

/** m across from the left end and up from the ground. */
export type Box = { readonly x: number; readonly z: number; readonly width: number; readonly height: number };

/** A wall in m, with what is on it; the unit as it is meant to be; the height that snow asks for. */
export type WallPicture = {
  readonly width: number;
  readonly height: number;
  readonly things: readonly Box[];
  readonly out: { readonly x: number; readonly z: number };
  readonly unit?: Box;
  readonly snow?: number;
};

/** px kept round the wall. */
const rim = 6;

/** A wall from outside, one pixel of the picture a pixel of the screen; letters and numbers are those of its key. */
export function ReachDrawing({
  id,
  map,
  picture,
  reached,
}: {
  id: string;
  map: Maps[number];
  picture: WallPicture;
  reached: readonly number[];
}) {
  const [ref, { width, em }] = useRoom<HTMLDivElement>();
  const per = Math.max(0, width - 2 * rim) / Math.max(0.1, picture.width);
  const tall = picture.height * per + 2 * rim;
  const x = (m: number): number => rim + m * per;
  const y = (m: number): number => tall - rim - m * per;
  const rectOf = (b: Box) => ({ x: x(b.x), y: y(b.z + b.height), width: b.width * per, height: b.height * per });
  return (
    <div className="reach-drawing" ref={ref}>
      {width > 0 && (
        <svg
          viewBox={`0 0 ${width} ${tall}`}
          width={width}
          height={tall}
          role="img"
          aria-label="The wall with what is on it, and the regions that each line set reaches. The key below says the same."
        >
          <ReachPatterns map={id} />
          <rect {...rectOf({ x: 0, z: 0, width: picture.width, height: picture.height })} className="reach-wall" />
          {reached.map((stock) => (
            <path
              key={stock}
              d={regionPath(
                map.rows,
                stock,
                (c) => x(c * map.cell),
                (r) => y(r * map.cell),
              )}
              fill={`url(#${patternId(id, stock)})`}
            />
          ))}
          {picture.snow !== undefined && (
            <line x1={x(0)} x2={x(picture.width)} y1={y(picture.snow)} y2={y(picture.snow)} className="reach-snow" />
          )}
          {picture.things.map((thing, i) => (
            <g key={`${thing.x} ${thing.z}`}>
              <rect {...rectOf(thing)} className="reach-thing" />
              <Mark x={x(thing.x + thing.width / 2)} y={y(thing.z + thing.height / 2)} em={em}>
                {i + 1}
              </Mark>
            </g>
          ))}
          {reached.map((stock) => {
            const square = roomiest(map.rows, stock);
            if (square === undefined) return null;
            const middle = (cells: number): number => (cells + square.side / 2) * map.cell;
            return (
              <Mark key={stock} x={x(middle(square.column))} y={y(middle(square.row))} em={em} plate>
                {letterOf(stock)}
              </Mark>
            );
          })}
          <circle cx={x(picture.out.x)} cy={y(picture.out.z)} r={0.4 * em} className="reach-out" />
          {picture.unit && (
            <>
              <rect {...rectOf(picture.unit)} className="reach-unit" />
              <circle cx={x(picture.unit.x)} cy={y(picture.unit.z)} r={0.3 * em} className="reach-corner" />
            </>
          )}
          <line x1={0} y1={y(0)} x2={width} y2={y(0)} className="reach-ground" />
        </svg>
      )}
    </div>
  );
}

/** A letter or number of the key, on a plate of its own where lines run beneath it. */
function Mark({
  x,
  y,
  em,
  plate = false,
  children,
}: {
  x: number;
  y: number;
  em: number;
  plate?: boolean;
  children: ReactNode;
}) {
  return (
    <>
      {plate && <circle cx={x} cy={y} r={0.7 * em} className="reach-plate" />}
      <text x={x} y={y + 0.35 * em} className="reach-mark">
        {children}
      </text>
    </>
  );
}
