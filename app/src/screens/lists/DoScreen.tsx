import type { Task } from '@kneewall/engine';
import { holdPointTitle, holdPointWords } from '@kneewall/engine';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity, QuantityRange } from '../../quantity/Quantity.tsx';
import { goTo, useRoute } from '../../route/route.ts';
import { usePlanner } from '../../services.ts';
import { TaskCard } from './card/TaskCard.tsx';
import { DeadlinesSheet } from './DeadlinesSheet.tsx';
import { Standing } from './Standing.tsx';
import { WindowsToAdd } from './WindowsToAdd.tsx';
import { OpenCard, WorkWindows } from './WorkWindows.tsx';
import './Lists.css';

/** What there is to do, by window where there is a plan, and by hold point; each task with its cautions first and where it may be left. */
export function DoScreen() {
  const plan = usePlanner((p) => p.plan);
  const tasks = plan?.tasks ?? [];
  const schedule = plan?.trades.schedule;
  const planned = schedule?.work.ok === true || schedule?.first !== undefined;
  const { card } = useRoute();
  const open = tasks.find((t) => t.id === card);
  return (
    <>
      <header className="screen-head">
        <h1>What to do</h1>
        <p className="lead">Work may be left only at a safe stop. Times are for two handy people.</p>
      </header>
      {plan && <Standing plan={plan} />}
      {plan && open && <TaskCard key={open.id} task={open} plan={plan} close={() => goTo({ screen: 'do' })} />}
      {plan && <WindowsToAdd plan={plan} />}
      {plan && planned && <WorkWindows plan={plan} />}
      {plan && planned && <DeadlinesSheet plan={plan} />}
      {tasks.length === 0 && <p>No task follows from the plan yet.</p>}
      {planned ? (
        <details className="by-point">
          <summary>All tasks by hold point</summary>
          <ByHoldPoint tasks={tasks} />
        </details>
      ) : (
        <ByHoldPoint tasks={tasks} />
      )}
    </>
  );
}

/** Every task under the step before which it is done. */
const ByHoldPoint = ({ tasks }: { tasks: readonly Task[] }) =>
  holdPointWords.map((point) => {
    const here = tasks.filter((t) => t.holdPoint === point);
    return here.length === 0 ? null : (
      <Sheet key={point} title={`${holdPointTitle[point].title}: ${holdPointTitle[point].until}`}>
        <ul className="tasks">
          {here.map((task) => (
            <li key={task.id}>
              <OneTask task={task} />
            </li>
          ))}
        </ul>
      </Sheet>
    );
  });

function OneTask({ task }: { task: Task }) {
  return (
    <article className="task">
      {task.cautions.length > 0 && (
        <ul className="caution">
          {task.cautions.map((c) => (
            <li key={c}>{c}</li>
          ))}
        </ul>
      )}
      <h3>{task.what}</h3>
      <p>
        <QuantityRange range={task.duration} kind="time" />, <Quantity value={task.people} kind="count" />{' '}
        {task.people === 1 ? 'person' : 'people'}
      </p>
      <p className="field-help">Safe stops: {task.safeStops.join('; ')}</p>
      <OpenCard task={task.id} />
    </article>
  );
}
