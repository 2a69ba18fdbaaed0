import type { Plan, Task } from '@kneewall/engine';
import { useEffect, useState } from 'react';
import { Button } from '../../../look/Button.tsx';
import { useServices, useSession } from '../../../services.ts';
import type { Change } from '../../../session/act.ts';
import { doneShare, putOffChanges, tickChanges, untickChanges } from './tickChanges.ts';

/** Milliseconds that an act can be taken back where it was done; later by the header's undo. */
const undoFor = 10_000;

/** Done, part done, not today; each can be taken back in the same place for ten seconds. */
export function CardActs({ task, plan }: { task: Task; plan: Plan }) {
  const { session } = useServices();
  const project = useSession((s) => s.project);
  const barred = useSession((s) => s.barred !== undefined);
  const [said, say] = useState<string>();
  const [problem, setProblem] = useState(false);
  useEffect(() => {
    if (said === undefined) return;
    const timer = setTimeout(() => say(undefined), undoFor);
    return () => clearTimeout(timer);
  }, [said]);
  const parts = partsOf(plan, task);
  const share = doneShare(project, task.id);
  const had = Math.floor(share * parts + 1e-9);
  const all = share >= 1;
  const act = (changes: readonly Change[], words: string) => {
    const refused = session.change(changes).length > 0;
    setProblem(refused);
    say(refused ? undefined : words);
  };
  const [minutes, setMinutes] = useState('');
  const took = Number(minutes) > 0 ? { minutes: Number(minutes) } : {};
  const tick = (part?: number) => {
    const stopped = part === undefined ? {} : { part, of: parts };
    act(
      tickChanges(project, { task: task.id, ...stopped, ...took }, new Date()),
      part === undefined ? 'Ticked off.' : `Stopped after part ${part} of ${parts}.`,
    );
    setMinutes('');
  };
  return (
    <section className="card-acts" aria-label="Tick off">
      <p role="status" className="card-status">
        {said ?? standing(had, parts, all)}{' '}
        {problem && 'This could not be kept: the project is open elsewhere or cannot be saved.'}
      </p>
      {said !== undefined && (
        <Button
          onClick={() => {
            session.undo();
            say(undefined);
          }}
        >
          Take it back
        </Button>
      )}
      {all ? (
        <Button disabled={barred} onClick={() => act(untickChanges(project, task.id), 'The ticks are taken out.')}>
          Not done after all
        </Button>
      ) : (
        <>
          <label className="card-minutes">
            Minutes at work, if you counted
            <input inputMode="numeric" value={minutes} onChange={(e) => setMinutes(e.target.value)} />
          </label>
          <Button look="strong" disabled={barred} onClick={() => tick()}>
            Done
          </Button>
          {parts > 1 && <PartDone had={had} parts={parts} barred={barred} tick={tick} />}
          <Button
            disabled={barred}
            onClick={() =>
              act(putOffChanges(project, task.id, dayIn(plan, task), new Date()), 'Put off to a later day.')
            }
          >
            Not today
          </Button>
        </>
      )}
    </section>
  );
}

type PartProps = { had: number; parts: number; barred: boolean; tick: (part: number) => void };

/** How many parts are done, counted up or down with a thumb. */
function PartDone({ had, parts, barred, tick }: PartProps) {
  const [chosen, choose] = useState(had + 1);
  const part = Math.min(parts - 1, Math.max(had + 1, chosen));
  if (had + 1 >= parts) return null;
  const stopped = (
    <Button disabled={barred} onClick={() => tick(part)}>
      Stopped after part {part} of {parts}
    </Button>
  );
  if (had + 2 >= parts) return stopped;
  return (
    <div className="card-part">
      <Button aria-label="One part fewer" disabled={part <= had + 1} onClick={() => choose(part - 1)}>
        −
      </Button>
      {stopped}
      <Button aria-label="One part more" disabled={part >= parts - 1} onClick={() => choose(part + 1)}>
        +
      </Button>
    </div>
  );
}

const standing = (had: number, parts: number, all: boolean): string =>
  all ? 'This is ticked off.' : had > 0 ? `Done: part ${had} of ${parts}.` : '';

/** Into how many parts the plan cuts a task; 1 where it has no place in it. */
function partsOf({ trades }: Plan, { id }: Task): number {
  const { schedule } = trades;
  const planned = schedule?.work.ok ? schedule.work.value.parts.find((p) => p.task === id)?.parts : undefined;
  return planned ?? schedule?.sum?.done[id]?.of ?? 1;
}

/** The day on which the next part of a task is planned. */
function dayIn({ trades }: Plan, { id }: Task): string | undefined {
  const { schedule } = trades;
  if (!schedule?.work.ok || !schedule.frame.ok) return undefined;
  const next = schedule.work.value.parts.find((p) => p.task === id);
  return schedule.frame.value.windows.find((w) => next && w.from <= next.from && next.from < w.to)?.day;
}
