import { type DarkWeek, monthOfDay, monthStart } from '@kneewall/engine';
import { shortMonths } from '@kneewall/project';
import { FoldedTable } from '../../look/FoldedTable.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import './DarkWeekChart.css';

const wide = 168;
const power = 46;
const charge = 22;
const gap = 5;

/** The seven days in which the sun falls furthest short: what is drawn, what the sun gives, and how full the battery is. */
export function DarkWeekChart({ week }: { week: DarkWeek }) {
  const most = Math.max(...week.load, ...week.sun, 1);
  const y = (watts: number): number => power - (power * watts) / most;
  const area = (watts: readonly number[]): string =>
    `0,${power} ${watts.map((w, h) => `${h},${y(w).toFixed(2)} ${h + 1},${y(w).toFixed(2)}`).join(' ')} ${wide},${power}`;
  const top = power + gap;
  const full = week.charge.map((c, h) => `${h + 0.5},${(top + charge * (1 - c)).toFixed(2)}`).join(' ');
  const running = week.generator.filter((w) => w > 0).length;
  const held = week.held.reduce((sum, share) => sum + share, 0);
  const days = Array.from({ length: 7 }, (_, d) => dayName(week.firstDay + d));
  return (
    <figure className="dark-week">
      <svg viewBox={`0 0 ${wide} ${top + charge + 13}`} aria-hidden="true" focusable="false">
        <polygon className="dark-week-sun" points={area(week.sun)} />
        <polyline className="dark-week-load" points={area(week.load)} />
        <rect className="dark-week-frame" x="0" y={top} width={wide} height={charge} />
        <polyline className="dark-week-charge" points={full} />
        {marks(week.generator, (w) => w > 0).map(([from, to]) => (
          <rect key={from} className="dark-week-generator" x={from} width={to - from} y={top + charge + 1} height="3" />
        ))}
        {marks(week.held, (share) => share > 0).map(([from, to]) => (
          <rect key={from} className="dark-week-held" x={from} width={to - from} y={power + 1} height="3" />
        ))}
        {days.map((day, d) => (
          <g key={day}>
            <line className="dark-week-day" x1={d * 24} x2={d * 24} y1="0" y2={top + charge + 5} />
            <text x={d * 24 + 1} y={top + charge + 11}>
              {day}
            </text>
          </g>
        ))}
      </svg>
      <figcaption className="field-help">
        From {days[0]} on, midnight to midnight. Above: filled, what the sun could give; the line, what is drawn, up to{' '}
        <Quantity value={most} kind="electric-power" significant={2} />. Below: the battery from empty to full, and the
        generator’s hours as bars under it: {running} of 168.
        {held >= 1 && ` Bars between the two mark hours in which power holds the heat back: ${Math.round(held)}.`}
      </figcaption>
      <HoursTable week={week} />
    </figure>
  );
}

const dayName = (day: number): string => {
  const month = monthOfDay(day % 365);
  return `${(day % 365) - (monthStart[month] ?? 0) + 1} ${shortMonths[month] ?? ''}`;
};

/** Runs of hours for which something holds, from and up to. */
function marks(values: readonly number[], holds: (value: number) => boolean): (readonly [number, number])[] {
  const found: [number, number][] = [];
  values.forEach((value, hour) => {
    if (!holds(value)) return;
    const last = found.at(-1);
    if (last && last[1] === hour) last[1] = hour + 1;
    else found.push([hour, hour + 1]);
  });
  return found;
}

function HoursTable({ week }: { week: DarkWeek }) {
  const columns = ['Day and hour', 'Outdoor air', 'Drawn', 'Sun', 'Generator', 'Battery', 'Cells', 'Room'];
  return (
    <FoldedTable title="The week hour by hour" columns={columns}>
      {week.load.map((load, h) => {
        const name = `${dayName(week.firstDay + Math.floor(h / 24))}, ${h % 24}:00`;
        return (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td>
              <Quantity value={week.outdoor[h] ?? 0} kind="temperature" />
            </td>
            <td>
              <Quantity value={load} kind="electric-power" />
            </td>
            <td>
              <Quantity value={week.sun[h] ?? 0} kind="electric-power" />
            </td>
            <td>
              <Quantity value={week.generator[h] ?? 0} kind="electric-power" />
            </td>
            <td>
              <Quantity value={week.charge[h] ?? 0} kind="fraction" significant={2} />
            </td>
            <td>
              <Quantity value={week.cell[h] ?? 0} kind="temperature" />
            </td>
            <td>
              <Quantity value={week.room[h] ?? 0} kind="temperature" />
            </td>
          </tr>
        );
      })}
    </FoldedTable>
  );
}
