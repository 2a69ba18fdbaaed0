import { type ListLine, piecesWords } from '@kneewall/engine';
import { type ReactNode, useState } from 'react';
import { Button } from '../../look/Button.tsx';
import { QuantityRange } from '../../quantity/Quantity.tsx';
import { usePlanner, useServices, useSession, useUnits } from '../../services.ts';
import { freePrices, priceEdit, takeEdit } from './priceEdits.ts';

/** Folded under a line: what it is for (`children`), and its price: what it is and whose, to type for one pack, or to take from prices that are there. */
export function PriceBox({ line, children }: { line: ListLine; children: ReactNode }) {
  const { session } = useServices();
  const units = useUnits();
  const barred = useSession((s) => s.barred !== undefined);
  const project = useSession((s) => s.project);
  const list = usePlanner((p) => p.plan?.trades.materials?.list);
  const [typed, type] = useState('');
  const [wrong, setWrong] = useState(false);
  const free = list?.ok ? freePrices(project, list.value.lines) : [];
  const one = line.piece > 0 ? piecesWords(line, 1, line.piece, units) : 'all of it';
  const save = (): void => {
    const edit = priceEdit(session.now().project, line, typed);
    setWrong(edit === undefined);
    if (!edit) return;
    session.change([edit]);
    type('');
  };
  return (
    <details className="fold">
      <summary>
        <span className="fold-title">
          {line.price ? 'Price' : 'Enter a price'}
          {line.from.length > 1 && ', and what it is for'}
        </span>
      </summary>
      {children}
      <div className="buy-columns">
        {line.price && (
          <p>
            Taken: <QuantityRange range={line.price.each} kind="money" /> for {one}, from “{line.price.name}”.
          </p>
        )}
        <label className="field">
          Price for {one === '1' ? 'one' : one}
          <input
            className="box"
            inputMode="decimal"
            value={typed}
            disabled={barred}
            onChange={(e) => type(e.target.value)}
            onKeyDown={(e) => e.key === 'Enter' && save()}
          />
        </label>
        {wrong && (
          <p className="field-problem" role="alert">
            Write a number above 0, like 12.50.
          </p>
        )}
        <Button disabled={barred || typed.trim() === ''} onClick={save}>
          Take this price
        </Button>
        {free.length > 0 && (
          <label className="field">
            Or one of your prices
            <select
              className="box"
              value=""
              disabled={barred}
              onChange={(e) => e.target.value !== '' && session.change([takeEdit(e.target.value, line)])}
            >
              <option value="">choose</option>
              {free.map(([id, name]) => (
                <option key={id} value={id}>
                  {name}
                </option>
              ))}
            </select>
          </label>
        )}
      </div>
    </details>
  );
}
