import type { TradeResults } from '@kneewall/engine';
import { FoldedTable } from '../../look/FoldedTable.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import './HouseCurves.css';
import { OutcomeOr } from './OutcomeOr.tsx';

type Days = Extract<TradeResults['loads']['days'], { ok: true }>['value'];

const driverWords: Readonly<Record<Days['parts'][number]['driver'], string>> = {
  'window-sun': 'Sun through the windows',
  'shell-sun': 'Sun on walls and roof',
  air: 'Leaking air',
  people: 'People',
  appliances: 'Appliances',
  through: 'Warmth through walls, glass and ceilings',
};

/** The cold night and the hot day with the walls' own memory. */
export function HotDaySheet({ days }: { days: TradeResults['loads']['days'] }) {
  return (
    <Sheet title="Hour by hour, with what the walls hold">
      <OutcomeOr outcome={days} what="The hot day hour by hour">
        {(found) => (
          <>
            <p>
              The hot day is worst at {found.day.worst + 1}:00:{' '}
              <Quantity value={found.day.sensible[found.day.worst] ?? 0} kind="power" /> of cooling and{' '}
              <Quantity value={found.day.latent[found.day.worst] ?? 0} kind="power" /> of drying. Walls and furniture
              put off part of the day’s heat, so this is often less than a sum of steady parts.
            </p>
            <HourBars day={found.day} />
            <DriverTable parts={found.parts} />
            <p>
              On the cold night the house takes <Quantity value={found.night.house} kind="power" /> at its worst hour.
              Lowering the night by <Quantity value={found.recovery.setback} kind="temperature-difference" /> makes the
              morning take <Quantity value={found.recovery.night.house} kind="power" />.
            </p>
          </>
        )}
      </OutcomeOr>
    </Sheet>
  );
}

const height = 50;

function HourBars({ day }: { day: Days['day'] }) {
  const most = Math.max(...day.sensible.map((x, h) => x + (day.latent[h] ?? 0)), 1);
  const tall = (x: number): number => ((height - 6) * x) / most;
  return (
    <figure className="curves">
      <svg viewBox={`0 0 120 ${height + 6}`} aria-hidden="true" focusable="false">
        {day.sensible.map((x, h) => {
          const wet = tall(day.latent[h] ?? 0);
          return (
            // biome-ignore lint/suspicious/noArrayIndexKey: an hour is its place in the day.
            <g key={h}>
              <rect x={h * 5 + 0.5} width="4" y={height - tall(x)} height={tall(x)} />
              <rect className="curves-wet" x={h * 5 + 0.5} width="4" y={height - tall(x) - wet} height={wet} />
              {h % 6 === 0 && (
                <text x={h * 5 + 0.5} y={height + 5}>
                  {h}:00
                </text>
              )}
            </g>
          );
        })}
      </svg>
      <figcaption className="field-help">
        Cooling in each hour of the hot day, sun time; the open top is drying.
      </figcaption>
      <FoldedTable title="The hours in numbers" columns={['Hour', 'Cooling', 'Drying']}>
        {day.sensible.map((x, h) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: an hour is its place in the day.
          <tr key={h}>
            <th scope="row">{h}:00</th>
            <td>
              <Quantity value={x} kind="power" />
            </td>
            <td>
              <Quantity value={day.latent[h] ?? 0} kind="power" />
            </td>
          </tr>
        ))}
      </FoldedTable>
    </figure>
  );
}

function DriverTable({ parts }: { parts: Days['parts'] }) {
  return (
    <table className="parts">
      <caption>What makes the worst hour</caption>
      <tbody>
        {parts.map(({ driver, heat }) => (
          <tr key={driver}>
            <th scope="row">{driverWords[driver]}</th>
            <td>
              <Quantity value={heat} kind="power" />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
