import type { DayCurves } from '@kneewall/engine';
import { shortMonths } from '@kneewall/project';
import type { ReactNode } from 'react';
import { FoldedTable } from '../../look/FoldedTable.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import './HouseCurves.css';

const height = 44;

/** The mean day of each month: how full the battery is, and how warm its cells are. */
export function ChargeDays({ charge, cell }: { charge: DayCurves; cell: DayCurves }) {
  const all = cell.flat();
  const [warmest, coldest] = [Math.max(...all, 1), Math.min(...all, -1)];
  return (
    <>
      <MonthCurves curves={charge} top={1} bottom={0} across={0.5}>
        How full the battery is on the mean day of each month, midnight to midnight, from empty to full; the line across
        is half.
      </MonthCurves>
      <MonthCurves curves={cell} top={warmest} bottom={coldest} across={0}>
        How warm its cells are, from <Quantity value={Math.min(...all)} kind="temperature" /> to{' '}
        <Quantity value={Math.max(...all)} kind="temperature" />; the line across is freezing, below which lithium takes
        no charge.
      </MonthCurves>
      <FoldedTable
        title="The battery’s months in numbers"
        columns={['Month', 'Lowest of the day', 'Highest', 'Coldest cells', 'Warmest']}
      >
        {shortMonths.map((name, m) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td>
              <Quantity value={Math.min(...(charge[m] ?? []))} kind="fraction" significant={2} />
            </td>
            <td>
              <Quantity value={Math.max(...(charge[m] ?? []))} kind="fraction" significant={2} />
            </td>
            <td>
              <Quantity value={Math.min(...(cell[m] ?? []))} kind="temperature" />
            </td>
            <td>
              <Quantity value={Math.max(...(cell[m] ?? []))} kind="temperature" />
            </td>
          </tr>
        ))}
      </FoldedTable>
    </>
  );
}

type Props = { curves: DayCurves; top: number; bottom: number; across: number; children: ReactNode };

function MonthCurves({ curves, top, bottom, across, children }: Props) {
  const y = (value: number): number => 3 + ((height - 6) * (top - value)) / (top - bottom);
  const line = (day: readonly number[], month: number): string =>
    day.map((value, h) => `${(month * 10 + 1 + (8 * h) / 23).toFixed(2)},${y(value).toFixed(2)}`).join(' ');
  return (
    <figure className="curves">
      <svg viewBox={`0 0 120 ${height + 7}`} aria-hidden="true" focusable="false">
        <line className="curves-freezing" x1="0" x2="120" y1={y(across)} y2={y(across)} />
        {curves.map((day, m) => (
          <g key={shortMonths[m]}>
            <polyline className="curves-line" points={line(day, m)} />
            <text x={m * 10 + 2} y={height + 5}>
              {shortMonths[m]}
            </text>
          </g>
        ))}
      </svg>
      <figcaption className="field-help">{children}</figcaption>
    </figure>
  );
}
