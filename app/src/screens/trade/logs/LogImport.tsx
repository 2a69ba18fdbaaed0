import {
  clockSeen,
  encodingOf,
  hashOfBytes,
  type LogEntry,
  type LogPlan,
  type Problem,
  planLog,
  readLog,
} from '@kneewall/project';
import { useState } from 'react';
import { Button } from '../../../look/Button.tsx';
import { useServices, useSession } from '../../../services.ts';
import { ProblemList } from '../../project/ProblemList.tsx';
import { LogMapping } from './LogMapping.tsx';
import './Logs.css';

/** A file that was chosen, and how it would be read so far. */
type Chosen = { readonly text: string; readonly entry: LogEntry; readonly plan: LogPlan };

/** Takes a log in three steps: choose the file, confirm how it is understood, take it. Nothing is kept before. */
export function LogImport() {
  const { session, store } = useServices();
  const barred = useSession((s) => s.barred !== undefined);
  const site = useSession((s) => s.project.site);
  const [chosen, setChosen] = useState<Chosen | undefined>();
  const [reading, setReading] = useState(false);
  const [problems, setProblems] = useState<readonly Problem[]>([]);

  const choose = async (file: File | undefined): Promise<void> => {
    if (!file) return;
    const bytes = new Uint8Array(await file.arrayBuffer());
    const text = new TextDecoder(encodingOf(bytes)).decode(bytes);
    const named: LogEntry = { name: file.name.slice(0, 200), blob: hashOfBytes(bytes) };
    const plan = planLog(text, named, site);
    setProblems(plan.dialect ? [] : plan.problems);
    setChosen(plan.dialect ? { text, entry: { ...named, columns: plan.columns }, plan } : undefined);
  };

  const change = (entry: LogEntry): void => {
    if (chosen) setChosen({ ...chosen, entry, plan: planLog(chosen.text, entry, site) });
  };

  const take = async ({ text, entry }: Chosen): Promise<void> => {
    setReading(true);
    // A year of minutes takes a second or two: the page says so before it begins.
    await new Promise((drawn) => setTimeout(drawn, 50));
    const read = readLog(text, entry, site);
    setReading(false);
    setProblems(read.problems);
    if (!read.value || entry.blob === undefined) return;
    const seen = entry.clock === undefined ? clockSeen(read.value, 0) : undefined;
    const kept = seen === 'europe' || seen === 'america' ? { ...entry, clock: seen } : entry;
    try {
      await store.putBlob(entry.blob, text);
    } catch {
      setProblems([notKept(entry.name ?? '')]);
      return;
    }
    session.change([{ path: ['logs', `log-${entry.blob.slice(0, 12)}`], after: kept }]);
    setChosen(undefined);
  };

  return (
    <div className="log-import">
      {chosen ? (
        <>
          <LogMapping entry={chosen.entry} plan={chosen.plan} change={change} />
          <div className="buttons">
            <Button disabled={reading || chosen.plan.reading === undefined} onClick={() => void take(chosen)}>
              {reading ? 'Reading…' : 'Take it like this'}
            </Button>
            <Button look="quiet" onClick={() => setChosen(undefined)}>
              Leave it
            </Button>
          </div>
        </>
      ) : (
        <label className={`button file-button ${barred ? 'barred-button' : ''}`}>
          Import a log
          <input
            type="file"
            accept=".csv,.txt,.tsv"
            disabled={barred}
            onChange={(e) => {
              void choose(e.currentTarget.files?.[0]);
              e.currentTarget.value = '';
            }}
          />
        </label>
      )}
      {problems.length > 0 && (
        <div role="alert">
          <ProblemList problems={problems} />
        </div>
      )}
    </div>
  );
}

const notKept = (name: string): Problem => ({
  code: 'too-large',
  path: [name],
  grade: 'refused',
  mend: 'The log could not be kept on this device, so it was not taken.',
});
