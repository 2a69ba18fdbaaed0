import type { LogAnswers } from '@kneewall/engine';
import { dayText, printQuantity } from '@kneewall/project';
import { useUnits } from '../../../services.ts';

type Points = Extract<LogAnswers['house'], { points: unknown }>['points'];

const [wide, tall] = [100, 62];
const room = { left: 3, top: 4, right: 3, bottom: 9 };
const across = wide - room.left - room.right;
const down = tall - room.top - room.bottom;

/** Heat of days by how much colder it was outdoors, with the line of the loss; and below, what the fit misses, day after day. */
export function LogPoints({ points, loss }: { points: Points; loss: number }) {
  const units = useUnits();
  const apart = points.map((p) => p[1]);
  const heat = points.map((p) => p[2]);
  const most = Math.max(...heat, 1);
  const middle = { apart: mean(apart), heat: mean(heat) };
  const [cold, warm] = [Math.max(...apart), Math.min(...apart)];
  const x = (a: number): number => room.left + (across * (a - warm)) / Math.max(1e-9, cold - warm);
  const y = (q: number): number => room.top + down * (1 - Math.max(0, q) / most);
  const line = (a: number): number => middle.heat + loss * (a - middle.apart);
  const say = (a: number): string => printQuantity(a, 'temperature-difference', units, { significant: 2 });
  const power = (q: number): string => printQuantity(q, 'power', units, { significant: 2 });
  return (
    <div className="log-charts">
      <figure>
        <figcaption>Heat by degrees apart, a point a day; the line is the loss.</figcaption>
        <svg viewBox={`0 0 ${wide} ${tall}`} aria-hidden="true" focusable="false">
          <rect className="log-frame" x={room.left} y={room.top} width={across} height={down} />
          {points.map(([day, a, q]) => (
            <circle key={day} cx={x(a)} cy={y(q)} r="0.9" />
          ))}
          <line x1={x(warm)} x2={x(cold)} y1={y(line(warm))} y2={y(line(cold))} />
          <text x={room.left} y={tall - 3}>
            {say(warm)}
          </text>
          <text x={wide - room.right} y={tall - 3} textAnchor="end">
            {say(cold)}
          </text>
          <text x={room.left + 1} y={room.top + 4.5}>
            {power(most)}
          </text>
        </svg>
      </figure>
      <Misses points={points} power={power} />
    </div>
  );
}

/** W that the fit misses, from the first day to the last. */
function Misses({ points, power }: { points: Points; power: (q: number) => string }) {
  const first = points[0]?.[0] ?? 0;
  const last = points.at(-1)?.[0] ?? 1;
  const most = Math.max(...points.map((p) => Math.abs(p[3])), 1);
  const x = (day: number): number => room.left + (across * (day - first)) / Math.max(1, last - first);
  const y = (miss: number): number => room.top + (down * (1 - miss / most)) / 2;
  return (
    <figure>
      <figcaption>What the line and the weather leave unexplained, day after day.</figcaption>
      <svg viewBox={`0 0 ${wide} ${tall}`} aria-hidden="true" focusable="false">
        <rect className="log-frame" x={room.left} y={room.top} width={across} height={down} />
        <line className="log-zero" x1={room.left} x2={wide - room.right} y1={y(0)} y2={y(0)} />
        {points.map(([day, , , miss]) => (
          <circle key={day} cx={x(day)} cy={y(miss)} r="0.9" />
        ))}
        <text x={room.left} y={tall - 3}>
          {dayText(Math.round(first))}
        </text>
        <text x={wide - room.right} y={tall - 3} textAnchor="end">
          {dayText(Math.round(last))}
        </text>
        <text x={room.left + 1} y={room.top + 4.5}>
          {power(most)}
        </text>
        <text x={room.left + 1} y={room.top + down - 1.5}>
          {power(-most)}
        </text>
      </svg>
    </figure>
  );
}

const mean = (x: readonly number[]): number => x.reduce((a, b) => a + b, 0) / Math.max(1, x.length);
