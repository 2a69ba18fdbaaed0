import { sniffWeather } from '@kneewall/engine';
import { hashOfBytes, type SchemaNode } from '@kneewall/project';
import { useState } from 'react';
import { Button } from '../look/Button.tsx';
import { FileButton } from '../look/FileButton.tsx';
import { ProblemList } from '../screens/project/ProblemList.tsx';
import { useJobs, useServices, useSession } from '../services.ts';
import './WeatherField.css';

/** Imports a weather year. The file is kept beside the project, under the name of its own hash. */
export function WeatherField({ node, path }: { node: SchemaNode; path: readonly string[] }) {
  const { session, store } = useServices();
  const weather = useSession((s) => s.project.site?.weather);
  const barred = useSession((s) => s.barred !== undefined);
  const problems = useJobs((s) => s.weather);
  const [refusal, setRefusal] = useState('');
  const group = path.slice(0, -1);
  const take = async (file: File | undefined) => {
    if (!file) return;
    const bytes = new Uint8Array(await file.arrayBuffer());
    const text = new TextDecoder().decode(bytes);
    // What is no table at all never takes the place of a file that is one.
    const isNone =
      text.trim() === '' ? 'is empty' : text.includes('\0') || text.includes('\ufffd\ufffd') ? 'is no text' : undefined;
    if (isNone) {
      setRefusal(`${file.name} ${isNone}, so nothing was changed. Get it again, and unpack it first if it is zipped.`);
      return;
    }
    const sha = hashOfBytes(bytes);
    try {
      await store.putBlob(sha, text);
    } catch {
      setRefusal('The file could not be kept on this device, so it was not taken.');
      return;
    }
    setRefusal('');
    session.change([
      { path: [...group, 'blob'], after: sha },
      { path: [...group, 'name'], after: file.name.slice(0, 200) },
      { path: [...group, 'format'], after: sniffWeather(text) },
    ]);
  };
  return (
    <div className="field weather">
      <p>
        <strong>{node.meta.label}</strong>: {weather?.blob ? (weather.name ?? 'imported') : 'none yet'}
      </p>
      <div className="buttons">
        <FileButton
          label="Import a weather file"
          accept=".csv,.json,.txt"
          disabled={barred}
          choose={([file]) => void take(file)}
        />
        {weather?.blob && (
          <Button look="quiet" disabled={barred} onClick={() => session.change([{ path, after: undefined }])}>
            Take it out
          </Button>
        )}
      </div>
      {refusal !== '' && (
        <p className="field-problem" role="alert">
          {refusal}
        </p>
      )}
      <ProblemList problems={problems} />
    </div>
  );
}
