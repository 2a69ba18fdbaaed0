import { readRecorded, sniffWeather } from '@kneewall/engine';
import { hashOfBytes, type Problem, type SchemaNode } from '@kneewall/project';
import { useState } from 'react';
import { Button } from '../look/Button.tsx';
import { FileButton } from '../look/FileButton.tsx';
import { ProblemList } from '../screens/project/ProblemList.tsx';
import { useServices, useSession } from '../services.ts';
import { fieldId } from './useField.ts';
import './WeatherField.css';

/** Takes years that were measured, several files at once. A file with a fault is not taken, and says where the fault is. */
export function RecordedField({ node, path }: { node: SchemaNode; path: readonly string[] }) {
  const { session } = useServices();
  const recorded = useSession((s) => s.project.site?.recorded) ?? {};
  const barred = useSession((s) => s.barred !== undefined);
  const [problems, take] = useTaking(path);
  const years = Object.entries(recorded).sort(([, a], [, b]) => ((a.name ?? '') < (b.name ?? '') ? -1 : 1));
  return (
    <div className="field weather" id={fieldId(path)}>
      <p>
        <strong>{node.meta.label}</strong>: {years.length === 0 ? 'none yet' : years.length}
      </p>
      <p className="field-help">{node.meta.help}</p>
      <ul className="recorded-years">
        {years.map(([id, year]) => (
          <li key={id}>
            <span>{year.name ?? 'A recorded year'}</span>
            <Button
              look="quiet"
              disabled={barred}
              onClick={() => session.change([{ path: [...path, id], after: undefined }])}
            >
              Take it out
            </Button>
          </li>
        ))}
      </ul>
      <div className="buttons">
        <FileButton
          label="Import recorded years"
          accept=".csv,.json,.txt"
          multiple
          disabled={barred}
          choose={(files) => void take(files)}
        />
      </div>
      {problems.length > 0 && (
        <div role="alert">
          <ProblemList problems={problems} />
        </div>
      )}
    </div>
  );
}

/** What the last files lacked, and what takes the next. */
function useTaking(path: readonly string[]): readonly [readonly Problem[], (files: readonly File[]) => Promise<void>] {
  const { session, store } = useServices();
  const [problems, setProblems] = useState<readonly Problem[]>([]);
  const take = async (files: readonly File[]): Promise<void> => {
    const found: Problem[] = [];
    for (const file of files) {
      const bytes = new Uint8Array(await file.arrayBuffer());
      const text = new TextDecoder().decode(bytes);
      const sha = hashOfBytes(bytes);
      const entry = { blob: sha, name: file.name.slice(0, 200), format: sniffWeather(text) };
      const read = readRecorded(text, entry, session.now().project.site);
      found.push(...read.problems);
      if (!read.value) continue;
      try {
        await store.putBlob(sha, text);
      } catch {
        found.push(notKept(entry.name));
        continue;
      }
      // Named by its content: the same file taken twice is one year.
      session.change([{ path: [...path, `year-${sha.slice(0, 12)}`], after: entry }]);
    }
    setProblems(found);
  };
  return [problems, take];
}

const notKept = (name: string): Problem => ({
  code: 'too-large',
  path: [name],
  grade: 'refused',
  mend: 'The file could not be kept on this device, so it was not taken.',
});
