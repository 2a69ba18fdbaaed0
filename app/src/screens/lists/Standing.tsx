import type { Plan } from '@kneewall/engine';
import { Quantity, QuantityRange } from '../../quantity/Quantity.tsx';

/** How far the work is: what is ticked off, what moved since, and the pace the crew's own times show. */
export function Standing({ plan }: { plan: Plan }) {
  const { schedule } = plan.trades;
  if (!schedule) return null;
  const { work, first, sum } = schedule;
  const pending = !work.ok && work.because === 'pending';
  const done = Object.values(sum?.done ?? {}).filter((d) => d.parts >= d.of).length;
  const learned = sum?.learned;
  return (
    <div role="status" className="standing">
      {pending && !first && <p>The work is being planned into your windows.</p>}
      {pending && first && (
        <p>
          This is the first plan that fits: it keeps to windows, heat, people and deliveries, and a better one is being
          looked for. Nothing is judged by it, printed or saved until then.
          {first.unplaced.length > 0 && (
            <>
              {' '}
              Without a place in it: <Quantity value={first.unplaced.length} kind="count" />.
            </>
          )}
        </p>
      )}
      {done > 0 && (
        <p>
          Ticked off: <Quantity value={done} kind="count" /> of <Quantity value={plan.tasks.length} kind="count" />{' '}
          tasks.
          {work.ok && (
            <>
              {' '}
              Planned for another time since the last tick: <Quantity value={work.value.moved.length} kind="count" />.
            </>
          )}
        </p>
      )}
      {learned && (
        <p>
          By your own times work takes <Quantity value={learned.likely} kind="number" significant={2} /> times as long
          as planned, in four of five cases <QuantityRange range={learned} kind="number" />. The rest is planned so.
        </p>
      )}
    </div>
  );
}
