import type { WinterSizes } from '@kneewall/engine';
import { printQuantity, type QuantityKind } from '@kneewall/project';
import { type ContourLine, contourLines, type Point, roundLevels } from '../../look/contourLines.ts';
import { useUnits } from '../../services.ts';
import './SizeLines.css';

const [wide, tall] = [100, 82];
const room = { left: 20, top: 3, right: 9, bottom: 9 };
/** Lines drawn, about. */
const about = 6;

/** Lines of equal hours over the size of panels and battery; what is there is marked. */
export function SizeLines({
  sizes,
  hours,
  name,
}: {
  sizes: WinterSizes;
  hours: readonly (readonly number[])[];
  name: string;
}) {
  const across = wide - room.left - room.right;
  const down = tall - room.top - room.bottom;
  const steps = { x: sizes.panels.length - 1, y: sizes.battery.length - 1 };
  const x = (step: number): number => room.left + (across * step) / steps.x;
  const y = (step: number): number => room.top + down - (down * step) / steps.y;
  const all = hours.flat();
  const levels = roundLevels(Math.min(...all), Math.max(...all), about);
  const mark = [stepOf(sizes.panels, sizes.own.panels), stepOf(sizes.battery, sizes.own.battery)] as const;
  const own = { x: x(mark[0]), y: y(mark[1]) };
  const labels = labelsOf(hours, levels, steps, mark);
  const path = (line: ContourLine): string => line.map(([c, r]) => `${x(c).toFixed(2)},${y(r).toFixed(2)}`).join(' ');
  return (
    <figure className="size-lines">
      <figcaption>{name}</figcaption>
      <svg viewBox={`0 0 ${wide} ${tall}`} aria-hidden="true" focusable="false">
        <rect className="size-lines-frame" x={room.left} y={room.top} width={across} height={down} />
        <Ticks values={sizes.panels} own={sizes.own.panels} kind="electric-power" at={x} side="below" />
        <Ticks values={sizes.battery} own={sizes.own.battery} kind="energy" at={y} side="left" />
        {levels.flatMap((level) =>
          contourLines(hours, level).map((line) => (
            <polyline key={`${level}:${line[0]}`} className="size-lines-line" points={path(line)} />
          )),
        )}
        {labels.map(({ level, at }) => (
          <text key={level} className="size-lines-level" x={x(at[0])} y={y(at[1]) + 1.2}>
            {level}
          </text>
        ))}
        <line className="size-lines-own" x1={own.x - 3} x2={own.x + 3} y1={own.y} y2={own.y} />
        <line className="size-lines-own" x1={own.x} x2={own.x} y1={own.y - 3} y2={own.y + 3} />
        <text className="size-lines-yours" x={own.x + 4} y={own.y + 1.4}>
          yours
        </text>
      </svg>
    </figure>
  );
}

/** Where a size stands among rising ones, in steps. */
function stepOf(sizes: readonly number[], size: number): number {
  const above = sizes.findIndex((s) => s >= size - 1e-9);
  const [low, high] = [sizes[above - 1] ?? 0, sizes[above] ?? 0];
  return above <= 0 ? 0 : above - 1 + (size - low) / (high - low);
}

/** Steps that a line's number keeps from the frame and from the mark of what is there. */
const apart = 2.5;

type Label = { readonly level: number; readonly at: Point };

/** The numbers of the lines, each where it meets no other. */
function labelsOf(
  hours: readonly (readonly number[])[],
  levels: readonly number[],
  steps: { readonly x: number; readonly y: number },
  mark: Point,
): Label[] {
  const placed: Label[] = [];
  for (const level of levels) {
    const at = labelPlace(contourLines(hours, level), steps, [mark, ...placed.map((l) => l.at)]);
    if (at) placed.push({ level, at });
  }
  return placed;
}

/** Where a line's number stands: furthest inside the frame, clear of the mark and of other numbers; nowhere on lines that only graze a corner. */
function labelPlace(
  lines: readonly ContourLine[],
  steps: { readonly x: number; readonly y: number },
  taken: readonly Point[],
): Point | undefined {
  const inside = ([c, r]: Point): number => Math.min(c, steps.x - c, r, steps.y - r);
  const clear = ([c, r]: Point): boolean =>
    taken.every(([x, y]) => Math.abs(r - y) > 1.2 || c < x - apart || c > x + 2 * apart);
  const places = lines.flat().filter((p) => clear(p) && inside(p) >= 1);
  return places.reduce<Point | undefined>(
    (best, p) => (best === undefined || Math.min(inside(p), apart) > Math.min(inside(best), apart) ? p : best),
    places[Math.floor(places.length / 2)],
  );
}

/** Marks at once, twice and so on what is there. */
function Ticks({
  values,
  own,
  kind,
  at,
  side,
}: {
  values: readonly number[];
  own: number;
  kind: QuantityKind;
  at: (step: number) => number;
  side: 'below' | 'left';
}) {
  const units = useUnits();
  const times = [1, 2, 3, 4].filter((m) => m * own <= (values.at(-1) ?? 0) + 1e-9);
  return times.map((m) => {
    const place = at(stepOf(values, m * own));
    const words = printQuantity(m * own, kind, units, {
      significant: 3,
      ...(kind === 'electric-power' ? { unit: 'kW' } : {}),
    });
    const bottom = tall - room.bottom;
    return side === 'below' ? (
      <g key={m}>
        <line className="size-lines-tick" x1={place} x2={place} y1={bottom} y2={bottom + 1.5} />
        <text className="size-lines-below" x={place} y={bottom + 6}>
          {words}
        </text>
      </g>
    ) : (
      <g key={m}>
        <line className="size-lines-tick" x1={room.left - 1.5} x2={room.left} y1={place} y2={place} />
        <text className="size-lines-left" x={room.left - 2.5} y={place + 1.3}>
          {words}
        </text>
      </g>
    );
  });
}
