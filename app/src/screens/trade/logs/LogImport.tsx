import { endLength, type LogEntry, logEndsOf, type Problem, type Project, planLog, tailFrom } from '@kneewall/project';
import { useState } from 'react';
import { FileButton } from '../../../look/FileButton.tsx';
import { useSession } from '../../../services.ts';
import { ProblemList } from '../../project/ProblemList.tsx';
import { type ChosenLog, LogTaking } from './LogTaking.tsx';
import './Logs.css';

/** Takes logs in three steps each: choose the file, confirm how it is understood, take it. Nothing is kept before. */
export function LogImport() {
  const barred = useSession((s) => s.barred !== undefined);
  const site = useSession((s) => s.project.site);
  const [chosen, setChosen] = useState<readonly ChosenLog[]>([]);
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const [number, setNumber] = useState(0);

  const choose = async (files: readonly File[]): Promise<void> => {
    const looked = await Promise.all(files.map((file, i) => lookedAt(file, number + i, site)));
    setNumber(number + files.length);
    setProblems(looked.flatMap(({ plan }) => (plan.dialect ? [] : plan.problems)));
    setChosen((before) => [...before, ...looked.filter(({ plan }) => plan.dialect)]);
  };
  const leave = (log: ChosenLog, found: readonly Problem[]): void => {
    setChosen((before) => before.filter((c) => c.number !== log.number));
    setProblems(found);
  };

  return (
    <div className="log-import">
      {chosen.map((log) => (
        <LogTaking key={log.number} log={log} leave={(found) => leave(log, found)} />
      ))}
      <FileButton
        label={chosen.length > 0 ? 'Import another log' : 'Import a log'}
        accept=".csv,.txt,.tsv"
        multiple
        disabled={barred}
        choose={(files) => void choose(files)}
      />
      {problems.length > 0 && (
        <div role="alert">
          <ProblemList problems={problems} />
        </div>
      )}
    </div>
  );
}

/** A chosen file with its beginning and end looked at: however long it is, no more of it is fetched here. */
async function lookedAt(file: File, number: number, site: Project['site']): Promise<ChosenLog> {
  const entry: LogEntry = { name: file.name.slice(0, 200) };
  const part = async (from: number, to: number) => new Uint8Array(await file.slice(from, to).arrayBuffer());
  const last = file.size > endLength ? part(tailFrom(file.size), file.size) : new Uint8Array();
  const ends = logEndsOf(await part(0, endLength), await last, (encoding) => new TextDecoder(encoding));
  const plan = planLog(ends, entry, site);
  return { number, file, ends, plan, entry: { ...entry, columns: plan.columns } };
}
