import { placeWords } from '@kneewall/documents';
import { type Plan, type Task, taskName } from '@kneewall/engine';
import { useEffect, useRef } from 'react';
import { Button } from '../../../look/Button.tsx';
import { Quantity, QuantityRange } from '../../../quantity/Quantity.tsx';
import { CardActs } from './CardActs.tsx';
import { ScreenOn } from './ScreenOn.tsx';
import './TaskCard.css';

/** One task over the whole screen: what can hurt first, then what, with what, how long, where to stop, and the ticks. */
export function TaskCard({ task, plan, close }: { task: Task; plan: Plan; close: () => void }) {
  const dialog = useRef<HTMLDialogElement>(null);
  useEffect(() => {
    const { current } = dialog;
    if (current && !current.open) current.showModal();
  }, []);
  return (
    <dialog ref={dialog} className="card" aria-labelledby="card-title" onClose={close}>
      <div className="card-head">
        <h2 id="card-title">{taskName(task.what)}</h2>
        <Button onClick={() => dialog.current?.close()}>Close</Button>
      </div>
      <Points title="Care" points={task.cautions} look="card-care" />
      <p>{task.what}.</p>
      <p className="card-facts">
        <QuantityRange range={task.duration} kind="time" />, <Quantity value={task.people} kind="count" />{' '}
        {task.people === 1 ? 'person' : 'people'}, {placeWords[task.place ?? 'attic']}
      </p>
      <Points title="With what" points={task.tools ?? []} />
      <Points title="Stop only at" points={task.safeStops} />
      <Points title="Done when" points={task.doneWhen ?? []} />
      {task.cures !== undefined && (
        <p>
          Then leave it alone for <Quantity value={task.cures} kind="time" />, or what its maker says.
        </p>
      )}
      <CardActs task={task} plan={plan} />
      <div className="card-foot">
        <ScreenOn />
        <Button onClick={() => window.print()}>Print this card</Button>
      </div>
      <p className="card-note">Above 35 °C a phone may switch itself off. Take the printed card up.</p>
    </dialog>
  );
}

function Points({ title, points, look = '' }: { title: string; points: readonly string[]; look?: string }) {
  if (points.length === 0) return null;
  return (
    <section className={look}>
      <h3>{title}</h3>
      <ul className="card-points">
        {points.map((p) => (
          <li key={p}>{p}</li>
        ))}
      </ul>
    </section>
  );
}
