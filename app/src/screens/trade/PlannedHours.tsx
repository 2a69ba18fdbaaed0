import type { TradeResults } from '@kneewall/engine';
import { Quantity } from '../../quantity/Quantity.tsx';
import { printRoute } from '../../route/route.ts';

type Planned = Extract<TradeResults['access']['heatHours'], { ok: true }>['value']['planned'];

const clock = (seconds: number): string =>
  `${Math.floor(seconds / 3600)}:${String(Math.round(seconds / 60) % 60).padStart(2, '0')}`;

function long(seconds: number): string {
  const minutes = Math.round(seconds / 60);
  return minutes < 60 ? `${minutes} min` : `${Math.floor(minutes / 60)} h ${minutes % 60} min`;
}

/** What the attic leaves of each free window that is entered, what to drink, and a start that leaves more. */
export function PlannedHours({ planned }: { planned: Planned }) {
  const known = planned.flatMap(({ id, of }) => (of.ok ? [{ id, of: of.value }] : []));
  return (
    <>
      {known.length > 0 && (
        <ul className="attic-planned">
          {known.map(({ id, of }) => (
            <li key={id}>
              <b>
                {of.day}, {clock(of.from)} to {clock(of.until)}
              </b>
              : {of.work > 0 ? `${long(of.work)} of work` : 'no work'}
              {of.drink > 0 && (
                <>
                  ; <Quantity value={of.drink / 1000} kind="volume" /> of water for each person
                </>
              )}
              .{of.bestWork > of.work + 60 && ` Begun at ${clock(of.best)} it leaves ${long(of.bestWork)}.`}
            </li>
          ))}
        </ul>
      )}
      <p className="field-help">
        The hours you plan to work are entered under{' '}
        <a href={printRoute({ screen: 'project', field: 'work.windows' })}>free time</a>, each with its day.
      </p>
    </>
  );
}
