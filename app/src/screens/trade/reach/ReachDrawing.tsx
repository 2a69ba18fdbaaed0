import type { TradeResults } from '@kneewall/engine';
import type { ResolvedProject } from '@kneewall/project';
import './ReachDrawing.css';

type Maps = Extract<TradeResults['lineset']['maps'], { ok: true }>['value'];
type Walls = ResolvedProject['routes']['lineset']['walls'];
type Number = { readonly likely: number } | { readonly missing: true };

const of = (x: Number): number => ('likely' in x ? x.likely : 0);

/** A wall from outside, in centimetres, the ground at its foot: what is on it, where a unit may be, where it is meant to be. */
export function ReachDrawing({
  map,
  wall,
  place,
}: {
  map: Maps[number];
  wall: Walls[string];
  place?: ResolvedProject['routes']['lineset']['place'];
}) {
  const [width, height] = [100 * of(wall.width), 100 * of(wall.height)];
  const up = (z: number, tall = 0): number => height - 100 * (z + tall);
  const cell = 100 * map.cell;
  return (
    <svg
      className="reach-drawing"
      viewBox={`-10 -10 ${width + 20} ${height + 20}`}
      role="img"
      aria-label="The wall with what is on it, and the regions that each line set reaches. The text below says the same."
    >
      <rect x={0} y={0} width={width} height={height} className="reach-wall" />
      {map.rows.map((row, r) =>
        row.map(({ from, to, stock }) => (
          <rect
            // biome-ignore lint/suspicious/noArrayIndexKey: a row is its place
            key={`${r} ${from}`}
            x={from * cell}
            y={up(r * map.cell, map.cell)}
            width={(to - from) * cell}
            height={cell + 0.2}
            className={`reach-${stock % 4}`}
          />
        )),
      )}
      {Object.entries(wall.obstacles).map(([id, t]) => (
        <g key={id}>
          <rect
            x={100 * of(t.x)}
            y={up(of(t.z), of(t.height))}
            width={100 * of(t.width)}
            height={100 * of(t.height)}
            className="reach-thing"
          />
          <title>{t.name ?? id}</title>
        </g>
      ))}
      <circle cx={100 * of(wall.outX)} cy={up(of(wall.outZ))} r={7} className="reach-out" />
      {place && 'likely' in place.x && 'likely' in place.z && (
        <path d={`M${100 * place.x.likely} ${up(place.z.likely)}l0 -26m0 26l26 0`} className="reach-place" />
      )}
      <line x1={-10} y1={height} x2={width + 10} y2={height} className="reach-ground" />
    </svg>
  );
}
