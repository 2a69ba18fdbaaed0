import {
  type LogEntry,
  type LogPlan,
  type LogQuantity,
  type LogUnit,
  logQuantities,
  logQuantityIds,
  logUnits,
  quantityOf,
  unitsOfDimension,
} from '@kneewall/project';
import { Scroll } from '../../../look/Scroll.tsx';
import { ProblemList } from '../../project/ProblemList.tsx';
import { LogQuestions } from './LogQuestions.tsx';

type Props = { readonly entry: LogEntry; readonly plan: LogPlan; readonly change: (entry: LogEntry) => void };

const rowsShown = 3;
/** The first rows as they are in the file, and for each column what it is taken for: to be confirmed or changed. */
export function LogMapping({ entry, plan, change }: Props) {
  const { dialect, problems } = plan;
  if (!dialect) return null;
  const columns = entry.columns ?? {};
  const idOf = (head: string): LogQuantity | '' => logQuantityIds.find((id) => columns[id]?.name === head) ?? '';
  const take = (head: string, id: LogQuantity | '', unit?: string): void => {
    const others = Object.fromEntries(Object.entries(columns).filter(([k, c]) => c?.name !== head && k !== id));
    const units = id === '' ? [] : unitsOfDimension(quantityOf(id).dimension);
    const own = unit ?? units[0];
    change({
      ...entry,
      columns: id === '' || own === undefined ? others : { ...others, [id]: { name: head, unit: own } },
    });
  };
  const data = dialect.heads.map((head, at) => ({ head, at })).filter(({ at }) => !dialect.time.includes(at));
  return (
    <>
      <p>
        “{entry.name}”: moments stand under “{dialect.time.map((t) => dialect.heads[t]).join('” and “')}”, first{' '}
        {dialect.time.map((t) => dialect.sample[0]?.[t]).join(' ')}. Look whether each column is what it is taken for.
      </p>
      <Scroll label="Columns of the log">
        <table className="table log-columns">
          <thead>
            <tr>
              <th scope="col">In the file</th>
              <th scope="col">Taken for</th>
              <th scope="col">In</th>
              <th scope="col">First rows</th>
            </tr>
          </thead>
          <tbody>
            {data.map(({ head, at }) => {
              const id = idOf(head);
              return (
                <tr key={at}>
                  <th scope="row">{head}</th>
                  <td>
                    <select
                      aria-label={`What “${head}” is`}
                      value={id}
                      onChange={(e) => take(head, e.currentTarget.value as LogQuantity | '')}
                    >
                      <option value="">Not used</option>
                      {logQuantityIds.map((q) => (
                        <option key={q} value={q}>
                          {logQuantities[q].label}
                        </option>
                      ))}
                    </select>
                  </td>
                  <td>
                    {id !== '' && (
                      <select
                        aria-label={`Unit of “${head}”`}
                        value={columns[id]?.unit ?? ''}
                        onChange={(e) => take(head, id, e.currentTarget.value)}
                      >
                        {unitsOfDimension(quantityOf(id).dimension).map((u: LogUnit) => (
                          <option key={u} value={u}>
                            {logUnits[u].label}
                          </option>
                        ))}
                      </select>
                    )}
                  </td>
                  <td className="log-first">
                    {dialect.sample
                      .slice(0, rowsShown)
                      .map((r) => r[at] ?? '')
                      .join(' · ')}
                  </td>
                </tr>
              );
            })}
          </tbody>
        </table>
      </Scroll>
      <LogQuestions entry={entry} dialect={dialect} change={change} />
      {problems.length > 0 && <ProblemList problems={problems} />}
    </>
  );
}
