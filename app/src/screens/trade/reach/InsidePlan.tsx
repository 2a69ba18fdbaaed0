import type { TradeResults } from '@kneewall/engine';
import { inOrder, type ResolvedProject } from '@kneewall/project';
import { useRoom } from '../../../look/useRoom.ts';
import { Quantity } from '../../../quantity/Quantity.tsx';

type Lineset = ResolvedProject['routes']['lineset'];
type Way = Extract<TradeResults['lineset']['insides'][number]['way'], { ok: true }>['value'];
type Size = { readonly likely: number } | { readonly missing: true };

/** px kept round the plan. */
const rim = 14;

/** The way inside seen from above: spaces, what it goes round, and the line with its bends; its drops in words. */
export function InsidePlan({ way, indoor, name }: { way: Way; indoor: Lineset['indoor']; name: string }) {
  const [ref, { width, em }] = useRoom<HTMLDivElement>();
  const spaces = boxesOf(indoor.spaces);
  const things = boxesOf(indoor.things);
  const corners = [...spaces, ...things].flatMap((b) => [
    [b.x, b.y],
    [b.x + b.width, b.y + b.depth],
  ]);
  const all = [...corners, ...way.points];
  const [left, right] = ends(all.map((p) => p[0] ?? 0));
  const [near, far] = ends(all.map((p) => p[1] ?? 0));
  const per = Math.max(0, width - 2 * rim) / Math.max(0.5, right - left);
  const tall = (far - near) * per + 2 * rim;
  const x = (m: number): number => rim + (m - left) * per;
  const y = (m: number): number => rim + (far - m) * per;
  const [start, end] = [way.points[0], way.points.at(-1)];
  const rect = (b: Flat) => ({ x: x(b.x), y: y(b.y + b.depth), width: b.width * per, height: b.depth * per });
  return (
    <figure className="reach">
      <figcaption>
        Inside, to {name}: the shortest way takes <Quantity value={way.length} kind="length" />, the wall counted, with{' '}
        {way.bends} {way.bends === 1 ? 'bend' : 'bends'}
        {way.up > 0 && (
          <>
            , <Quantity value={way.up} kind="length" /> up
          </>
        )}
        {way.down > 0 && (
          <>
            , <Quantity value={way.down} kind="length" /> down
          </>
        )}
        . Seen from above.
      </figcaption>
      <div className="reach-drawing" ref={ref}>
        {width > 0 && (
          <svg
            viewBox={`0 0 ${width} ${tall}`}
            width={width}
            height={tall}
            role="img"
            aria-label={`The way inside to ${name}, from above`}
          >
            {spaces.map((b) => (
              <rect key={`${b.x} ${b.y}`} {...rect(b)} className="reach-wall" />
            ))}
            {things.map((b) => (
              <g key={`${b.x} ${b.y}`}>
                <rect {...rect(b)} className="reach-thing" />
                <text x={x(b.x + b.width / 2)} y={y(b.y) + 1.1 * em} className="reach-mark">
                  {b.name}
                </text>
              </g>
            ))}
            <polyline points={way.points.map((p) => `${x(p[0])},${y(p[1])}`).join(' ')} className="reach-way" />
            {start && <circle cx={x(start[0])} cy={y(start[1])} r={0.35 * em} className="reach-corner" />}
            {end && <circle cx={x(end[0])} cy={y(end[1])} r={0.4 * em} className="reach-out" />}
          </svg>
        )}
      </div>
    </figure>
  );
}

type Flat = {
  readonly name: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly depth: number;
};

const boxesOf = (boxes: Lineset['indoor']['things']): Flat[] =>
  inOrder(boxes).flatMap(([id, b]) => {
    const [x, y, width, depth] = [b.x, b.y, b.width, b.depth].map((s: Size) => ('likely' in s ? s.likely : undefined));
    return x === undefined || y === undefined || width === undefined || depth === undefined
      ? []
      : [{ name: b.name ?? id, x, y, width, depth }];
  });
const ends = (all: readonly number[]): [number, number] => [Math.min(...all), Math.max(...all)];
