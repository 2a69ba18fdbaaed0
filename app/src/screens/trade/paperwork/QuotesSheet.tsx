import { type QuoteRow, quoteScopeTitle } from '@kneewall/engine';
import { Scroll } from '../../../look/Scroll.tsx';
import { Sheet } from '../../../look/Sheet.tsx';
import { Quantity, QuantityRange } from '../../../quantity/Quantity.tsx';
import { OutcomeOr } from '../OutcomeOr.tsx';

const columns = ['Quote', 'Asks', 'Leaves out', 'With all that', 'Warranty on the work'];

/** Quotes brought to the whole job, so that they can be compared; nothing where there is none. */
export function QuotesSheet({ quotes }: { quotes: readonly QuoteRow[] }) {
  if (quotes.length === 0) return null;
  return (
    <Sheet title="Quotes, brought to the whole job">
      <Scroll label="Quotes, brought to the whole job">
        <table className="table">
          <thead>
            <tr>
              {columns.map((column) => (
                <th key={column} scope="col">
                  {column}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {quotes.map((q) => (
              <tr key={q.id}>
                <th scope="row">{q.name}</th>
                <td>{q.amount ? <Quantity value={q.amount.likely} kind="money" /> : 'not entered'}</td>
                <td>{q.missing.map((m) => quoteScopeTitle[m.scope]).join(', ') || 'nothing'}</td>
                <td>
                  <OutcomeOr outcome={q.total} what="Its total">
                    {(total) => <QuantityRange range={total} kind="money" />}
                  </OutcomeOr>
                </td>
                <td>
                  {q.warrantyYears === undefined
                    ? 'not said'
                    : `${q.warrantyYears} ${q.warrantyYears === 1 ? 'year' : 'years'}`}
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </Scroll>
      <p className="field-help">
        What is not marked as written in a quote is added at what that part costs from somebody else, as you entered it
        below. Have the missing parts put in writing before you sign.
      </p>
    </Sheet>
  );
}
