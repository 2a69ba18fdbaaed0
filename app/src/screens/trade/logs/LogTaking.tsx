import { type LogEnds, type LogEntry, type LogPlan, type Problem, planLog } from '@kneewall/project';
import { useEffect, useRef, useState } from 'react';
import { takeLog } from '../../../logFiles/takeLog.ts';
import { Button } from '../../../look/Button.tsx';
import { useServices, useSession } from '../../../services.ts';
import { ProblemList } from '../../project/ProblemList.tsx';
import { LogMapping } from './LogMapping.tsx';

/** A file that was chosen, and how it would be read. `number`: which of those chosen here it is. */
export type ChosenLog = {
  readonly number: number;
  readonly file: File;
  readonly ends: LogEnds;
  readonly entry: LogEntry;
  readonly plan: LogPlan;
};

type Props = { readonly log: ChosenLog; readonly leave: (problems: readonly Problem[]) => void };

/** One chosen log: confirmed, then read in a worker that can be stopped at any time. */
export function LogTaking({ log, leave }: Props) {
  const { session, store } = useServices();
  const site = useSession((s) => s.project.site);
  const [{ entry, plan }, setRead] = useState({ entry: log.entry, plan: log.plan });
  const [share, setShare] = useState<number | undefined>();
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [cancelled, setCancelled] = useState(false);
  const reading = useRef<AbortController | undefined>(undefined);
  // Whoever leaves the screen has not taken it.
  useEffect(() => () => reading.current?.abort(), []);

  const take = async (): Promise<void> => {
    const stop = new AbortController();
    reading.current = stop;
    setProblems([]);
    setCancelled(false);
    setShare(0);
    const took = await takeLog(log.file, entry, { session, store }, stop.signal, (done, total) =>
      setShare(done / total),
    );
    setShare(undefined);
    setCancelled(took.how === 'cancelled');
    if (took.how === 'taken') leave(took.problems);
    else setProblems(took.problems);
  };

  if (share !== undefined)
    return (
      <p className="log-reading">
        <span>
          Reading “{entry.name}”: {Math.round(100 * share)} % of {megabytes(log.file.size)}
        </span>
        <progress aria-label={`Reading ${entry.name}`} value={share} max={1} />
        <Button onClick={() => reading.current?.abort()}>Cancel</Button>
      </p>
    );
  return (
    <>
      <LogMapping
        entry={entry}
        plan={plan}
        change={(changed) => setRead({ entry: changed, plan: planLog(log.ends, changed, site) })}
      />
      {cancelled && <p role="status">Cancelled: nothing of this log was kept.</p>}
      {problems.length > 0 && (
        <div role="alert">
          <ProblemList problems={problems} />
        </div>
      )}
      <div className="buttons">
        <Button disabled={plan.reading === undefined} onClick={() => void take()}>
          Take it like this
        </Button>
        <Button look="quiet" onClick={() => leave([])}>
          Leave it
        </Button>
      </div>
    </>
  );
}

const megabytes = (bytes: number): string =>
  bytes < 1e6 ? `${Math.max(1, Math.round(bytes / 1e3))} kB` : `${Math.round(bytes / 1e6)} MB`;
