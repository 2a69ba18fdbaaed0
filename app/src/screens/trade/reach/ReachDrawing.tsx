import type { TradeResults, Wall } from '@kneewall/engine';
import { type MouseEvent, type ReactNode, useRef } from 'react';
import { useRoom } from '../../../look/useRoom.ts';
import type { Box } from './box.ts';
import { letterOf, patternId, ReachPatterns } from './ReachPatterns.tsx';
import { regionPath, roomiest } from './reachShapes.ts';
import { UnitHandle } from './UnitHandle.tsx';
import { lowerLeft, sizeOf } from './unitMove.ts';
import type { UnitMove } from './useUnitMove.ts';

type Maps = Extract<TradeResults['lineset']['maps'], { ok: true }>['value'];
type Unit = Extract<TradeResults['lineset']['asked'], { ok: true }>['value']['unit'];

/** px kept round the wall. */
const rim = 6;

/**
 * A wall from outside and, folded down at its foot, the ground before it from above; one pixel of the picture a pixel of the
 * screen. Letters and numbers are those of its key.
 */
export function ReachDrawing({
  id,
  maps,
  wall,
  unit,
  reached,
  move,
}: {
  id: string;
  maps: Maps;
  wall: Wall;
  unit: Unit;
  reached: readonly number[];
  move: UnitMove;
}) {
  const [ref, { width, em }] = useRoom<HTMLDivElement>();
  const board = useRef<HTMLDivElement>(null);
  const per = Math.max(0, width - 2 * rim) / Math.max(0.1, wall.width);
  const foot = rim + wall.height * per;
  const tall = foot + wall.ground.depth * per + rim;
  const x = (m: number): number => rim + m * per;
  const y = (m: number): number => foot - m * per;
  const rectOf = (b: Box) => ({ x: x(b.x), y: y(b.z + b.height), width: b.width * per, height: b.height * per });
  const { place, answer } = move;
  const box = place ? boxOf(lowerLeft(place, unit), sizeOf(place, unit)) : undefined;
  const marked = [...wall.things, ...wall.ground.things.map(onGround)];
  const put = (event: MouseEvent<HTMLDivElement>) => {
    const around = board.current?.getBoundingClientRect();
    if (!around || move.barred || (event.target instanceof Element && event.target.closest('.unit-handle'))) return;
    move.to([(event.clientX - around.left - rim) / per, (foot - (event.clientY - around.top)) / per]);
    move.keep();
  };
  return (
    <div className="reach-drawing" ref={ref}>
      {width > 0 && (
        // biome-ignore lint/a11y/noStaticElementInteractions: the same is done from the keyboard with the unit's own button
        // biome-ignore lint/a11y/useKeyWithClickEvents: the same is done from the keyboard with the unit's own button
        <div className="reach-board" ref={board} onClick={put} style={{ inlineSize: width, blockSize: tall }}>
          <svg
            viewBox={`0 0 ${width} ${tall}`}
            width={width}
            height={tall}
            role="img"
            aria-label="The wall and the ground before it with what is on them, and the regions that each line set reaches. The key below says the same."
          >
            <ReachPatterns map={id} />
            <rect {...rectOf({ x: 0, z: 0, width: wall.width, height: wall.height })} className="reach-wall" />
            <rect
              {...rectOf({ x: 0, z: -wall.ground.depth, width: wall.width, height: wall.ground.depth })}
              className="reach-earth"
            />
            <Regions id={id} maps={maps} reached={reached} x={x} y={y} />
            <line x1={x(0)} x2={x(wall.width)} y1={y(unit.baseLeast)} y2={y(unit.baseLeast)} className="reach-snow" />
            {marked.map((thing, i) => (
              <g key={`${thing.x} ${thing.z}`}>
                <rect {...rectOf(thing)} className={`reach-thing ${'soft' in thing ? 'soft' : ''}`} />
                <Mark x={x(thing.x + thing.width / 2)} y={y(thing.z + thing.height / 2)} em={em}>
                  {i + 1}
                </Mark>
              </g>
            ))}
            <Letters maps={maps} reached={reached} x={x} y={y} em={em} />
            <line x1={0} y1={y(0)} x2={width} y2={y(0)} className="reach-ground" />
            {answer && (
              <polyline points={answer.way.map(([a, b]) => `${x(a)},${y(b)}`).join(' ')} className="reach-way" />
            )}
            <circle cx={x(wall.out.x)} cy={y(wall.out.z)} r={0.4 * em} className="reach-out" />
            {box && (
              <>
                <rect {...rectOf(box)} className="reach-unit" />
                <circle
                  cx={x(box.x)}
                  cy={y(place?.stands === 'ground' ? box.z + box.height : box.z)}
                  r={0.3 * em}
                  className="reach-corner"
                />
              </>
            )}
          </svg>
          {box && (
            <div
              className="unit-place"
              style={{
                left: x(box.x + box.width / 2),
                top: y(box.z + box.height / 2),
                inlineSize: box.width * per,
                blockSize: box.height * per,
              }}
            >
              <UnitHandle
                box={box}
                per={per}
                move={move}
                name={`Outdoor unit on ${wall.name}: move it by arrow keys`}
              />
            </div>
          )}
        </div>
      )}
    </div>
  );
}

type Put = (m: number) => number;

/** What each length reaches, each filled in its own way. */
function Regions({ id, maps, reached, x, y }: { id: string; maps: Maps; reached: readonly number[]; x: Put; y: Put }) {
  return maps.flatMap((map) =>
    reached.map((stock) => (
      <path
        key={`${map.stands} ${stock}`}
        d={regionPath(
          map.rows,
          stock,
          (c) => x(c * map.cell),
          (r) => y((map.stands === 'wall' ? r : -r) * map.cell),
        )}
        fill={`url(#${patternId(id, stock)})`}
      />
    )),
  );
}

/** The letter of each region, where it has room for one. */
function Letters({ maps, reached, x, y, em }: { maps: Maps; reached: readonly number[]; x: Put; y: Put; em: number }) {
  return maps.flatMap((map) =>
    reached.map((stock) => {
      const square = roomiest(map.rows, stock);
      if (square === undefined || x(square.side * map.cell) - x(0) < 1.2 * em) return null;
      const middle = (cells: number): number => (cells + square.side / 2) * map.cell;
      const up = map.stands === 'wall' ? 1 : -1;
      return (
        <Mark key={`${map.stands} ${stock}`} x={x(middle(square.column))} y={y(up * middle(square.row))} em={em} plate>
          {letterOf(stock)}
        </Mark>
      );
    }),
  );
}

const boxOf = ([x, z]: readonly [number, number], [width, height]: readonly [number, number]): Box => ({
  x,
  z,
  width,
  height,
});
const onGround = ({ kind, x, out, width, depth }: Wall['ground']['things'][number]): Box & { soft?: true } => ({
  ...boxOf([x, -out - depth], [width, depth]),
  ...(kind === 'soft' ? { soft: true as const } : {}),
});

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
