import { dayName } from '@kneewall/documents';
import type { Plan, ScheduleResult, Unplaced, WorkAnswers } from '@kneewall/engine';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import { WindowsToAdd } from '../lists/WindowsToAdd.tsx';
import { WorkWindows } from '../lists/WorkWindows.tsx';
import { OutcomeOr } from './OutcomeOr.tsx';

/** When all work is done, how sure that is, what makes it late, what has no place; then window by window. */
export default function ScheduleResultSheets({ result, plan }: { result: ScheduleResult; plan: Plan }) {
  const start = result.frame.ok ? result.frame.value.start : undefined;
  return (
    <>
      <Sheet title="The plan of work">
        <OutcomeOr outcome={result.work} what="Which work fits which window">
          {(work) => (start === undefined ? null : <Facts work={work} result={result} plan={plan} />)}
        </OutcomeOr>
      </Sheet>
      <WindowsToAdd plan={plan} />
      <WorkWindows plan={plan} />
    </>
  );
}

const dayOf = (start: string, minute: number): string =>
  dayName(new Date(Date.parse(`${start}T00:00:00Z`) + minute * 60_000).toISOString().slice(0, 10));

const why: Readonly<Record<Unplaced['because'], string>> = {
  'no-window': 'no window is long enough',
  'too-few': 'it needs more people than there are',
  'does-not-fit': 'the windows are used up',
  waits: 'it waits for one that has no place',
  circle: 'it waits for itself, through others',
  delivery: 'what it needs comes after the last window',
  'no-day': 'what it needs comes with a delivery that has no day',
  paper: 'its permit or inspection comes after the last window',
};

function Facts({ work, result, plan }: { work: WorkAnswers; result: ScheduleResult; plan: Plan }) {
  const frame = result.frame.ok ? result.frame.value : undefined;
  const start = frame?.start ?? '';
  const what = (id: string) => plan.tasks.find((t) => t.id === id)?.what ?? id;
  const decides = new Map<string, number>();
  for (const p of work.parts) decides.set(p.task, Math.max(decides.get(p.task) ?? 0, p.decides));
  const slips = [...decides]
    .filter(([, share]) => share > 0.5)
    .toSorted((a, b) => b[1] - a[1] || (a[0] < b[0] ? -1 : 1));
  return (
    <>
      {work.parts.length > 0 && (
        <p className="lead">
          {work.unplaced.length === 0 ? 'All' : 'What has a place'} is done on {dayOf(start, work.end)}
          {work.proved ? '; no plan ends sooner.' : '; '}
          {!work.proved && (
            <>
              at best <Quantity value={60 * (work.end - work.bound)} kind="time" /> sooner, as far as is proved.
            </>
          )}{' '}
          Nine times in ten it is done by {dayOf(start, work.ends.late)}.
        </p>
      )}
      {work.unplaced.length > 0 && <h3>Without a place</h3>}
      <ul className="asides">
        {work.unplaced.map((u) => (
          <li key={u.task}>
            {what(u.task)}: {why[u.because]}.
          </li>
        ))}
      </ul>
      {work.margin < 0.8 && (
        <p className="field-help">
          Not all fits with the margin that each part should have, so parts are planned with less of it.
        </p>
      )}
      <Moved work={work} what={what} />
      {slips.length > 0 && <h3>When one of these slips, all slips</h3>}
      <ul className="asides">
        {slips.slice(0, 5).map(([task]) => (
          <li key={task}>{what(task)}</li>
        ))}
      </ul>
    </>
  );
}

/** What the last ticks changed, and the pace they show. */
function Moved({ work, what }: { work: WorkAnswers; what: (id: string) => string }) {
  if (work.moved.length === 0) return null;
  return (
    <>
      <h3>
        Planned for another time since the last tick: <Quantity value={work.moved.length} kind="count" />
      </h3>
      <ul className="asides">
        {work.moved.map((id) => (
          <li key={id}>{what(id)}</li>
        ))}
      </ul>
    </>
  );
}
