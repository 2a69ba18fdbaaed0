import { type Problem, readDataSheet } from '@kneewall/project';
import { useState } from 'react';
import { FileButton } from '../look/FileButton.tsx';
import { ProblemList } from '../screens/project/ProblemList.tsx';
import { useField } from './useField.ts';

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
  const take = async (file: File): Promise<void> => {
    const { value: rows, problems } = readDataSheet(await file.text());
    const count = rows && change(rows) ? sizeOf(rows) : 0;
    setTaken({ file: file.name, count, before: sizeOf(value), problems });
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
        choose={([file]) => void (file && take(file))}
      />
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
