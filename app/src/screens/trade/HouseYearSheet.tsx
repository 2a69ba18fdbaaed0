import type { DayCurves, TradeResults } from '@kneewall/engine';
import { shortMonths } from '@kneewall/project';
import { FoldedTable } from '../../look/FoldedTable.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import './HouseCurves.css';
import { OutcomeOr } from './OutcomeOr.tsx';

const height = 60;

/** A year of the house: energy, the attic's days, and the house left to itself. */
export function HouseYearSheet({ year }: { year: TradeResults['loads']['year'] }) {
  return (
    <Sheet title="A year">
      <OutcomeOr outcome={year} what="The year">
        {(found) => (
          <>
            <p className="lead">
              It takes <Quantity value={found.heating.energy} kind="energy" /> of heat in an ordinary year and{' '}
              <Quantity value={found.cooling.sensible} kind="energy" /> of cooling.
            </p>
            <p>
              Left to itself the house is too cold for {Math.round(found.alone.cold)} hours and too hot for{' '}
              {Math.round(found.alone.hot)}, between <Quantity value={found.alone.lowest} kind="temperature" /> and{' '}
              <Quantity value={found.alone.highest} kind="temperature" />. With windows kept shut its air is above 70 %
              humidity for {Math.round(found.humidity.dampHours)} hours. One ordinary year states energy, not what a
              rare winter brings.
            </p>
            {found.attic && (
              <>
                <MonthDays title="The attic" curves={found.attic} outdoor={found.outdoor} />
                <p>
                  The attic reaches <Quantity value={found.atticMost ?? 0} kind="temperature" /> and is above{' '}
                  <Quantity value={40} kind="temperature" /> for {Math.round(found.atticHotHours ?? 0)} hours. Heat
                  kills: work there in short turns, in pairs, by published work and rest limits.
                </p>
              </>
            )}
            {found.below && <MonthDays title="The space below" curves={found.below} outdoor={found.outdoor} />}
            <MonthTable found={found} />
          </>
        )}
      </OutcomeOr>
    </Sheet>
  );
}

type MonthDaysProps = { title: string; curves: DayCurves; outdoor: DayCurves };

/** Twelve mean days side by side, a day's line for each month, with the outdoor air behind it. */
function MonthDays({ title, curves, outdoor }: MonthDaysProps) {
  const all = [...curves, ...outdoor].flat();
  const [top, bottom] = [Math.max(...all, 1), Math.min(...all, -1)];
  const y = (t: number): number => 4 + ((height - 8) * (top - t)) / (top - bottom);
  const line = (day: readonly number[], month: number): string =>
    day.map((t, h) => `${(month * 10 + 1 + (8 * h) / 23).toFixed(2)},${y(t).toFixed(2)}`).join(' ');
  return (
    <figure className="curves">
      <svg viewBox={`0 0 120 ${height + 7}`} aria-hidden="true" focusable="false">
        <line className="curves-freezing" x1="0" x2="120" y1={y(0)} y2={y(0)} />
        {curves.map((day, m) => (
          <g key={shortMonths[m]}>
            <polyline className="curves-outdoor" points={line(outdoor[m] ?? [], m)} />
            <polyline className="curves-line" points={line(day, m)} />
            <text x={m * 10 + 2} y={height + 5}>
              {shortMonths[m]}
            </text>
          </g>
        ))}
      </svg>
      <figcaption className="field-help">
        {title}: the mean day of each month, midnight to midnight, the outdoor air dashed behind it. From{' '}
        <Quantity value={Math.min(...curves.flat())} kind="temperature" /> to{' '}
        <Quantity value={Math.max(...curves.flat())} kind="temperature" />; the line across is freezing.
      </figcaption>
    </figure>
  );
}

type Year = Extract<TradeResults['loads']['year'], { ok: true }>['value'];

function MonthTable({ found }: { found: Year }) {
  const ends = (curves: DayCurves | undefined, m: number) =>
    curves?.[m] ? [Math.min(...(curves[m] ?? [])), Math.max(...(curves[m] ?? []))] : undefined;
  const columns = ['Month', 'Heat', 'Cooling', 'Humidity', ...(found.attic ? ['Attic, mean day'] : [])];
  return (
    <FoldedTable title="The year in numbers" columns={columns}>
      {shortMonths.map((name, m) => {
        const attic = ends(found.attic, m);
        return (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td>
              <Quantity value={found.heating.months[m] ?? 0} kind="energy" />
            </td>
            <td>
              <Quantity value={found.cooling.months[m] ?? 0} kind="energy" />
            </td>
            <td>
              <Quantity value={found.humidity.months[m] ?? 0} kind="relative-humidity" significant={2} />
            </td>
            {attic && (
              <td>
                <Quantity value={attic[0] ?? 0} kind="temperature" /> to{' '}
                <Quantity value={attic[1] ?? 0} kind="temperature" />
              </td>
            )}
          </tr>
        );
      })}
    </FoldedTable>
  );
}
