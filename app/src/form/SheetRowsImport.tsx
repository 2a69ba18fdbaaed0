import { type Problem, readDataSheet } from '@kneewall/project';
import { useState } from 'react';
import { Button } from '../look/Button.tsx';
import { FileButton } from '../look/FileButton.tsx';
import { ProblemList } from '../screens/project/ProblemList.tsx';
import { fieldId, useField } from './useField.ts';

type Taken = {
  readonly file: string;
  readonly count: number;
  readonly before: number;
  readonly problems: readonly Problem[];
};

const sizeOf = (rows: unknown): number => Object.keys(rows ?? {}).length;

/** Takes the rows of a unit's data sheet from a table, in place of those that are there. A faulty file changes nothing. */
export default function SheetRowsImport({ path }: { path: readonly string[] }) {
  const { value, change, barred, problems: refused } = useField(path);
  const [taken, setTaken] = useState<Taken>();
  const [pasted, setPasted] = useState('');
  const id = `${fieldId(path)}-pasted`;
  const take = (file: string, text: string): void => {
    const { value: rows, problems } = readDataSheet(text);
    const count = rows && change(rows) ? sizeOf(rows) : 0;
    setTaken({ file, count, before: sizeOf(value), problems });
    if (count > 0) setPasted('');
  };
  return (
    <div className="sheet-import">
      <p className="field-help">
        From a table instead (CSV): a row for each state, heads with their units in brackets, as mode, speed, outdoor
        (°F), capacity (Btu/h), power (W) or COP.
      </p>
      <FileButton
        label="Import rows"
        accept=".csv,.tsv,.txt"
        disabled={barred}
        choose={([file]) => void file?.text().then((text) => take(file.name, text))}
      />
      <details className="fold">
        <summary>
          <span className="fold-title">Paste rows from a spreadsheet</span>
        </summary>
        <label className="field-label" htmlFor={id}>
          Rows with their heads, as copied
        </label>
        <textarea
          id={id}
          className="box"
          rows={6}
          wrap="off"
          spellCheck={false}
          disabled={barred}
          value={pasted}
          onChange={(e) => setPasted(e.target.value)}
        />
        <Button disabled={barred || pasted.trim() === ''} onClick={() => take('what was pasted', pasted)}>
          Take these rows
        </Button>
      </details>
      {taken && (
        <div role="status">
          <p>{said(taken)}</p>
          <ProblemList problems={[...taken.problems, ...refused]} />
        </div>
      )}
    </div>
  );
}

function said({ file, count, before }: Taken): string {
  if (count === 0) return `Nothing was taken from ${file}; the rows are as they were.`;
  const replaced = before === 0 ? '' : ` They took the place of ${before}; Undo brings those back.`;
  return `${count} ${count === 1 ? 'row' : 'rows'} taken from ${file}.${replaced}`;
}
