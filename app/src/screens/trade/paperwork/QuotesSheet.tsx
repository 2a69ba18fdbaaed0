import { type OwnJob, ownJob, type QuoteRow, quoteScopeTitle, type ShoppingList } from '@kneewall/engine';
import { resolveProject } from '@kneewall/project';
import { useMemo } from 'react';
import { HeadedTable } from '../../../look/HeadedTable.tsx';
import { Sheet } from '../../../look/Sheet.tsx';
import { Quantity, QuantityRange } from '../../../quantity/Quantity.tsx';
import { useSession } from '../../../services.ts';
import { OutcomeOr } from '../OutcomeOr.tsx';

const columns = ['Quote', 'Asks', 'Leaves out', 'With all that', 'Warranty on the work'];

/** Quotes brought to the whole job beside what it comes to by one's own hands; nothing where there is no quote. */
export function QuotesSheet({
  quotes,
  cost,
}: {
  quotes: readonly QuoteRow[];
  cost?: ShoppingList['cost'] | undefined;
}) {
  const project = useSession((s) => s.project);
  const own = useMemo(() => (cost ? ownJob(cost, resolveProject(project).work) : undefined), [cost, project]);
  if (quotes.length === 0) return null;
  return (
    <Sheet title="Quotes, brought to the whole job">
      <HeadedTable label="Quotes, brought to the whole job" columns={columns}>
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
        {own && <OwnRow own={own} />}
      </HeadedTable>
      <p className="field-help">
        What is not marked as written in a quote is added at what that part costs from somebody else, as you entered it
        below. Have the missing parts put in writing before you sign.
      </p>
    </Sheet>
  );
}

/** By one's own hands: the shopping list, and what is paid to others all the same. */
function OwnRow({ own: { bought, unpriced, hired, total } }: { own: OwnJob }) {
  return (
    <tr>
      <th scope="row">By your own hands</th>
      <td>
        <QuantityRange range={bought} kind="money" />
        {unpriced > 0 && `, and ${unpriced} ${unpriced === 1 ? 'thing' : 'things'} without a price`}
      </td>
      <td>your hours; paid to others: {hired.map((s) => quoteScopeTitle[s]).join(', ')}</td>
      <td>
        <OutcomeOr outcome={total} what="Its total">
          {(sum) => (
            <>
              {unpriced > 0 && 'more than '}
              <QuantityRange range={sum} kind="money" />
            </>
          )}
        </OutcomeOr>
      </td>
      <td>the makers’ own</td>
    </tr>
  );
}
