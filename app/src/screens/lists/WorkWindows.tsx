import { clock, dayName, partWords, placeWords, type Stay, workByWindow, workCalendar } from '@kneewall/documents';
import type { Plan } from '@kneewall/engine';
import { handOver } from '../../files/saveFile.ts';
import { Button } from '../../look/Button.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { printRoute } from '../../route/route.ts';
import './Lists.css';
import './WorkWindows.css';

/** The plan of work, the first one until the best is found, window by window, the next one open: what, who, how long, where it may be left. */
export function WorkWindows({ plan }: { plan: Plan }) {
  const windows = workByWindow(plan, true);
  const file = workCalendar(plan);
  if (windows.length === 0) return null;
  return (
    <>
      {file !== undefined && (
        <p>
          <Button onClick={() => handOver('work-plan.ics', file, 'text/calendar')}>Save for your calendar</Button>
        </p>
      )}
      <Sheet title="Window by window">
        {windows.map((w, i) => (
          <details key={w.window} className="fold" open={i === 0}>
            <summary>
              <h3 className="fold-title">
                {dayName(w.day)}, {clock(w.from)} to {clock(w.to)}
              </h3>
              <span className="fold-count">
                <Quantity value={w.stays.length} kind="count" /> {w.stays.length === 1 ? 'piece' : 'pieces'} of work
                <InTime plan={plan} window={w.window} />
              </span>
            </summary>
            <ul className="work-stays">
              {w.stays.map((s) => (
                <li key={`${s.task} ${s.part}`}>
                  <OneStay stay={s} />
                </li>
              ))}
            </ul>
          </details>
        ))}
      </Sheet>
    </>
  );
}

/** How likely all of a window's work is done, or at a safe stop, when it ends. */
function InTime({ plan, window }: { plan: Plan; window: string }) {
  const { schedule } = plan.trades;
  const found = schedule?.work.ok ? schedule.work.value.windows.find((w) => w.window === window) : undefined;
  if (!found) return null;
  return (
    <>
      {', '}
      <Quantity value={found.inTime} kind="fraction" /> likely to end in time
    </>
  );
}

/** Leads to the card of a task, on whatever screen it is named. */
export const OpenCard = ({ task }: { task: string }) => (
  <p>
    <a className="button" href={printRoute({ screen: 'do', card: task })}>
      Open its card
    </a>
  </p>
);

function OneStay({ stay }: { stay: Stay }) {
  const { cautions, people } = stay;
  const part = partWords(stay);
  return (
    <article className="task">
      <h4>{stay.what}</h4>
      <p>
        {clock(stay.from)} to {clock(stay.to)}, {people} {people === 1 ? 'person' : 'people'},{' '}
        {placeWords[stay.place] ?? stay.place}
        {part === '' ? '' : `, ${part}`}
      </p>
      {cautions.length > 0 && (
        <ul className="caution">
          {cautions.map((c) => (
            <li key={c}>{c}</li>
          ))}
        </ul>
      )}
      <p className="field-help">Stop only at: {stay.safeStops.join('; ')}</p>
      <OpenCard task={stay.task} />
    </article>
  );
}
