import type { TradeResults } from '@kneewall/engine';
import { shortMonths } from '@kneewall/project';
import { FoldedTable } from '../../look/FoldedTable.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import './MonthsChart.css';

type Climate = TradeResults['climate'];
type Month = Extract<Climate['months'], { ok: true }>['value'][number];

const height = 60;
const axis = 7;

/** Each month from its usual lowest to its usual highest of a day, with the same numbers in a table. */
export function MonthsChart({ months }: { months: readonly Month[] }) {
  const ends = months.flatMap((m) => [m.mean - m.dailyRange / 2, m.mean + m.dailyRange / 2]);
  const top = Math.max(...ends, 1);
  const bottom = Math.min(...ends, -1);
  const y = (t: number) => 4 + ((height - 8) * (top - t)) / (top - bottom);
  return (
    <figure className="months">
      <svg viewBox={`0 0 120 ${height + axis}`} aria-hidden="true" focusable="false">
        <line className="months-freezing" x1="0" x2="120" y1={y(0)} y2={y(0)} />
        {months.map((m) => (
          <g key={m.month}>
            <rect
              x={m.month * 10 - 8}
              width="6"
              y={y(m.mean + m.dailyRange / 2)}
              height={Math.max(0.5, y(m.mean - m.dailyRange / 2) - y(m.mean + m.dailyRange / 2))}
            />
            <line className="months-mean" x1={m.month * 10 - 8} x2={m.month * 10 - 2} y1={y(m.mean)} y2={y(m.mean)} />
            <text x={m.month * 10 - 5} y={height + axis - 2}>
              {shortMonths[m.month - 1]}
            </text>
          </g>
        ))}
      </svg>
      <FoldedTable title="The months in numbers" columns={['Month', 'Mean', 'Day to night', 'Sun a day, per m²']}>
        {months.map((m) => (
          <tr key={m.month}>
            <th scope="row">{shortMonths[m.month - 1]}</th>
            <td>
              <Quantity value={m.mean} kind="temperature" />
            </td>
            <td>
              <Quantity value={m.dailyRange} kind="temperature-difference" />
            </td>
            <td>
              <Quantity value={m.sun} kind="energy" />
            </td>
          </tr>
        ))}
      </FoldedTable>
      <figcaption className="field-help">
        Each bar runs from a month’s usual night to its usual afternoon; the line across is freezing.
      </figcaption>
    </figure>
  );
}
