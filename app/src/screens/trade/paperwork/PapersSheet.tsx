import { licenceWords, listCsv, paperList } from '@kneewall/documents';
import { type PaperworkResult, type Plan, paperStatusTitle, paperTitle } from '@kneewall/engine';
import { handOver } from '../../../files/saveFile.ts';
import { Button } from '../../../look/Button.tsx';
import { HeadedTable } from '../../../look/HeadedTable.tsx';
import { Sheet } from '../../../look/Sheet.tsx';
import { Quantity } from '../../../quantity/Quantity.tsx';

const columns = ['Paper', 'Who asks', 'By', 'Stands', 'Licensed installer', 'Amount'];

/** All papers, the most pressing first. */
export function PapersSheet({ result: { papers, registers }, plan }: { result: PaperworkResult; plan: Plan }) {
  if (papers.length === 0)
    return (
      <Sheet title="Papers by the day they are due">
        <p>
          None is entered yet. Begin with what the local office wants: a permit, or a name and a day on which somebody
          there said that none is needed.
        </p>
      </Sheet>
    );
  return (
    <Sheet title="Papers by the day they are due">
      <HeadedTable label="Papers by the day they are due" columns={columns}>
        {papers.map((p) => (
          <tr key={p.id}>
            <th scope="row">{paperTitle(p)}</th>
            <td>{p.asker ?? (p.kind === 'quote' ? '–' : 'not entered')}</td>
            <td className="quantity">{p.due ?? (p.dueWrong ? 'no such day' : 'no day')}</td>
            <td>
              {paperStatusTitle[p.status]}
              {p.status === 'granted' && !p.evidence && ', no proof noted'}
              {registers[p.id] !== undefined && `; register within ${Math.round(registers[p.id] ?? 0)} days`}
            </td>
            <td>{p.kind === 'quote' ? '–' : licenceWords(p)}</td>
            <td>{p.amount ? <Quantity value={p.amount.likely} kind="money" /> : '–'}</td>
          </tr>
        ))}
      </HeadedTable>
      <p>
        <Button onClick={() => handOver('papers.csv', listCsv(paperList(plan)), 'text/csv')}>
          Save as a table (CSV)
        </Button>
      </p>
    </Sheet>
  );
}
