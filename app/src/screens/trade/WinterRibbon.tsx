import { daysInMonth, type RunHours } from '@kneewall/engine';
import { shortMonths } from '@kneewall/project';
import { ChartKey } from '../../look/ChartKey.tsx';
import { FoldedTable } from '../../look/FoldedTable.tsx';
import './WinterRibbon.css';

const height = 34;

/** How a unit runs, in the order in which the ribbon stacks it, with the words for each. */
const ways: readonly { readonly key: keyof RunHours; readonly word: string }[] = [
  { key: 'holding', word: 'runs steadily' },
  { key: 'stopStart', word: 'stops and starts' },
  { key: 'helped', word: 'with the strips’ help' },
  { key: 'flatOut', word: 'at all it has' },
];

/** The hours of each month by how the unit runs, as a share of the month, with the same numbers in a table. */
export function WinterRibbon({ title, months }: { title: string; months: readonly RunHours[] }) {
  const seen = ways.filter(({ key }) => months.some((m) => m[key] > 0));
  if (seen.length === 0) return null;
  return (
    <figure className="ribbon">
      <figcaption>{title}</figcaption>
      <svg viewBox={`0 0 120 ${height + 7}`} aria-hidden="true" focusable="false">
        {months.map((month, m) => (
          <g key={shortMonths[m]}>
            <rect className="ribbon-idle" x={m * 10 + 1} width="8" y="0" height={height} />
            <Stack month={month} at={m} />
            <text x={m * 10 + 2} y={height + 5}>
              {shortMonths[m]}
            </text>
          </g>
        ))}
      </svg>
      <ChartKey
        box={[12, 12]}
        entries={seen.map(({ key, word }) => ({ key, mark: <RibbonPatch way={key} />, said: word }))}
      />
      <FoldedTable title={`${title}, hours`} columns={['Month', ...seen.map((w) => w.word)]}>
        {months.map((month, m) => (
          <tr key={shortMonths[m]}>
            <th scope="row">{shortMonths[m]}</th>
            {seen.map(({ key }) => (
              <td key={key}>{Math.round(month[key])}</td>
            ))}
          </tr>
        ))}
      </FoldedTable>
    </figure>
  );
}

/** The pattern of one way of running, as the key shows it. */
export const RibbonPatch = ({ way }: { way: string }) => (
  <rect className={`ribbon-${way}`} x="1" y="1" width="10" height="10" />
);

function Stack({ month, at }: { month: RunHours; at: number }) {
  const hours = (daysInMonth[at] ?? 30) * 24;
  let below = height;
  return ways.map(({ key }) => {
    const tall = (height * month[key]) / hours;
    below -= tall;
    return tall > 0 ? (
      <rect key={key} className={`ribbon-${key}`} x={at * 10 + 1} width="8" y={below} height={tall} />
    ) : null;
  });
}
