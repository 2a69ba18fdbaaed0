import { clock, dayName } from '@kneewall/documents';
import { missingWords, type Plan, taskName, type WorkAnswers } from '@kneewall/engine';
import { Button } from '../../look/Button.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { useServices, useSession } from '../../services.ts';
import { windowEdits } from './windowEdits.ts';

type ToAdd = WorkAnswers['toAdd'][number];

/** The soonest windows that would hold the work without a place; each can be taken over. Nothing where all has a place. */
export function WindowsToAdd({ plan }: { plan: Plan }) {
  const { session } = useServices();
  const barred = useSession((s) => s.barred !== undefined);
  const { schedule } = plan.trades;
  if (!schedule?.work.ok || !schedule.frame.ok) return null;
  const { toAdd } = schedule.work.value;
  const { start, doneBy } = schedule.frame.value;
  if (toAdd.length === 0) return null;
  const late = toAdd.filter((w) => doneBy !== undefined && w.to > doneBy).length;
  const add = (windows: readonly ToAdd[]): void => {
    session.change(windowEdits(session.now().project, start, windows));
  };
  const day = (minute: number): string =>
    dayName(new Date(Date.parse(`${start}T00:00:00Z`) + minute * 60_000).toISOString().slice(0, 10));
  return (
    <Sheet title="Windows that would hold the rest">
      <p>
        The soonest ones beside those you entered, with nothing moved that has a place. In the attic they keep to its
        cool hours. {late > 0 && `${late} of ${toAdd.length} come after the day on which all should be done.`}
      </p>
      <ul className="tasks">
        {toAdd.map((w) => (
          <li key={`${w.task} ${w.from}`}>
            <p>
              <strong>
                {day(w.from)}, {clock(w.from)} to {clock(w.to)}
              </strong>
              , {w.people} {w.people === 1 ? 'person' : 'people'}:{' '}
              {taskName(plan.tasks.find((t) => t.id === w.task)?.what ?? w.task)}
              {w.parts > 1 && `, ${w.parts} parts of it`}. Missing: {missingWords[w.missing]}.
            </p>
            <Button
              disabled={barred}
              onClick={() => add([w])}
              aria-label={`Add the window of ${day(w.from)}, ${clock(w.from)}`}
            >
              Add this window
            </Button>
          </li>
        ))}
      </ul>
      {toAdd.length > 1 && (
        <p>
          <Button disabled={barred} look="strong" onClick={() => add(toAdd)}>
            Add all {toAdd.length} windows
          </Button>
        </p>
      )}
    </Sheet>
  );
}
