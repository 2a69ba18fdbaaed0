import { dayName } from '@kneewall/documents';
import { deadlinesOf, type Plan, taskName } from '@kneewall/engine';
import { Sheet } from '../../look/Sheet.tsx';
import { OpenCard } from './WorkWindows.tsx';

/** What takes no window and has a last day: the form of a warranty. Nothing while no such day is known. */
export function DeadlinesSheet({ plan }: { plan: Plan }) {
  const { schedule } = plan.trades;
  if (!schedule?.frame.ok) return null;
  const { start } = schedule.frame.value;
  const open = deadlinesOf(schedule).filter((d) => d.done === undefined);
  if (open.length === 0) return null;
  const day = (minute: number): string =>
    dayName(new Date(Date.parse(`${start}T00:00:00Z`) + minute * 60_000).toISOString().slice(0, 10));
  return (
    <Sheet title="Any evening, with a last day">
      <ul className="tasks">
        {open.map((d) => {
          const task = plan.tasks.find((t) => t.id === d.task);
          return (
            <li key={d.task}>
              <article className="task">
                <h3>{taskName(task?.what ?? d.task)}</h3>
                <p>
                  By <strong>{day(d.by - 1)}</strong>: {d.days} days from {day(d.from)}, when the plan has the first
                  start. It takes no window.
                </p>
                <OpenCard task={d.task} />
              </article>
            </li>
          );
        })}
      </ul>
    </Sheet>
  );
}
