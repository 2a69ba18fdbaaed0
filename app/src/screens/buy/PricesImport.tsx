import { type ColumnMap, type PriceColumn, type PricesRead, priceChanges, readPrices } from '@kneewall/project';
import { useState } from 'react';
import { Button } from '../../look/Button.tsx';
import { FileButton } from '../../look/FileButton.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { useServices, useSession } from '../../services.ts';
import { ProblemList } from '../project/ProblemList.tsx';

type File = { readonly name: string; readonly text: string };
type Taken = { readonly name: string; readonly count: number; readonly read: PricesRead };

/** Takes a price file: at once where its heads are known, else after a person said which column is which. */
export function PricesImport() {
  const { session } = useServices();
  const barred = useSession((s) => s.barred !== undefined);
  const [asking, ask] = useState<{ readonly file: File; readonly read: PricesRead }>();
  const [taken, setTaken] = useState<Taken>();
  const take = (file: File, columns: ColumnMap = {}): void => {
    const read = readPrices(file.text, columns);
    const unknown = read.taken.length === 0 && read.heads.length > 0 && read.left.length === 0;
    ask(unknown ? { file, read } : undefined);
    setTaken(unknown ? undefined : { name: file.name, count: read.taken.length, read });
    if (read.taken.length > 0) session.change(priceChanges(session.now().project, read));
  };
  return (
    <Sheet title="Prices from a file">
      <p className="field-help">
        A table with a name and a price in each row (CSV, any separator). A price that is there already is changed, none
        is taken away. Undo takes the whole file back.
      </p>
      <div className="buttons">
        <FileButton
          label="Import a price file"
          accept=".csv,.tsv,.txt"
          disabled={barred}
          choose={([file]) => void file?.text().then((text) => take({ name: file.name, text }))}
        />
      </div>
      {asking && <Columns heads={asking.read.heads} choose={(columns) => take(asking.file, columns)} />}
      {taken && <Report taken={taken} />}
    </Sheet>
  );
}

const asked: Readonly<Record<'name' | 'price' | 'unit', string>> = {
  name: 'The name stands in',
  price: 'The price stands in',
  unit: 'What it is sold by stands in',
};

/** Which column is which, where the heads of a file do not say. */
function Columns({ heads, choose }: { heads: readonly string[]; choose: (columns: ColumnMap) => void }) {
  const [columns, set] = useState<Partial<Record<PriceColumn, string>>>({});
  return (
    <div className="buy-columns">
      <p>Its heads are not known here. Say which column is which.</p>
      {(Object.keys(asked) as (keyof typeof asked)[]).map((column) => (
        <label key={column} className="field">
          {asked[column]}
          <select
            className="box"
            value={columns[column] ?? ''}
            onChange={(e) => {
              const { [column]: _old, ...rest } = columns;
              set(e.target.value === '' ? rest : { ...rest, [column]: e.target.value });
            }}
          >
            <option value="">{column === 'unit' ? 'no column' : 'choose'}</option>
            {heads
              .filter((h) => h !== '')
              .map((h) => (
                <option key={h} value={h}>
                  {h}
                </option>
              ))}
          </select>
        </label>
      ))}
      <Button
        look="strong"
        disabled={columns.name === undefined || columns.price === undefined}
        onClick={() => choose(columns)}
      >
        Take the prices
      </Button>
    </div>
  );
}

function Report({ taken: { name, count, read } }: { taken: Taken }) {
  const left = read.left.length;
  return (
    <div role="status">
      <p>
        {count === 0
          ? `Nothing was taken from ${name}.`
          : `${count} ${count === 1 ? 'price' : 'prices'} taken from ${name}.`}
        {left > 0 && ` ${left} ${left === 1 ? 'row was' : 'rows were'} left out:`}
      </p>
      <ProblemList problems={read.problems} />
      {left > 0 && (
        <ul className="buy-sources">
          {read.left.map((l) => (
            <li key={l.row}>
              Row {l.row}: {l.problem.mend} <span className="field-help">{l.cells.join(' | ')}</span>
            </li>
          ))}
        </ul>
      )}
    </div>
  );
}
