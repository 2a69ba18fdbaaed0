import type { TradeResults } from '@kneewall/engine';
import { monthNames, shortMonths } from '@kneewall/project';
import { FoldedTable } from '../../look/FoldedTable.tsx';
import { Sheet } from '../../look/Sheet.tsx';
import { Quantity } from '../../quantity/Quantity.tsx';
import './AtticHoursSheet.css';
import { OutcomeOr } from './OutcomeOr.tsx';
import { PlannedHours } from './PlannedHours.tsx';

type Hours = Extract<TradeResults['access']['heatHours'], { ok: true }>['value'];

/** Which hours of a day the attic can be worked in, month by month, by the house's own year. */
export function AtticHoursSheet({ hours }: { hours: TradeResults['access']['heatHours'] }) {
  return (
    <Sheet title="Which hours you can work in the attic">
      <OutcomeOr outcome={hours} what="The attic by the hour">
        {(found) => (
          <>
            <p className="lead">{summary(found)}</p>
            <HoursChart months={found.months} />
            <PlannedHours planned={found.planned} />
            <p className="field-help">
              For the effort, the clothes and the habit of heat entered below. On days hotter than nine of ten in their
              month it is less: hang a thermometer up there. Drink a cup each quarter of an hour; never alone; down at
              the first headache.
            </p>
          </>
        )}
      </OutcomeOr>
    </Sheet>
  );
}

const clock = (hour: number): string => `${hour}:00`;

/** The hottest month in a sentence. */
function summary({ months }: Hours): string {
  const peaks = months.map((m) => Math.max(...m.attic));
  const hottest = peaks.indexOf(Math.max(...peaks));
  const minutes = months[hottest]?.minutes ?? [];
  const month = monthNames[hottest];
  if (minutes.every((m) => m === 60)) return `Every hour of the year leaves the whole of it for work.`;
  const cut = minutes.findIndex((m, h) => h >= 5 && m < 60);
  const again = minutes.findLastIndex((m) => m < 60) + 1;
  const least = Math.min(...minutes);
  const worst = least === 0 ? 'none at all' : `${least} minutes of an hour`;
  const whole = cut > 5 ? `whole hours until ${clock(cut)}` : 'no whole hour in the morning';
  return `On a hot day in ${month}: ${whole}${again < 24 ? ` and from ${clock(again)}` : ''}; in the worst hour ${worst}.`;
}

const row = 6.4;
const cell = 4.5;
const left = 12;

/** A row for each month, a bar for each hour as high as the share of it that may be worked. */
function HoursChart({ months }: { months: Hours['months'] }) {
  return (
    <figure className="attic-hours">
      <svg viewBox={`0 0 120 ${12 * row + 7}`} aria-hidden="true" focusable="false">
        {months.map((m, i) => (
          <g key={shortMonths[i]}>
            <text x="0" y={i * row + 5.2}>
              {shortMonths[i]}
            </text>
            {m.minutes.map((minutes, h) => (
              // biome-ignore lint/suspicious/noArrayIndexKey: an hour is its place in the day.
              <g key={h}>
                <rect className="attic-hours-none" x={left + h * cell} width={cell} y={i * row + 0.7} height={5.4} />
                {minutes > 0 && (
                  <rect
                    x={left + h * cell + 0.4}
                    width={cell - 0.8}
                    y={i * row + 0.7 + 5.4 * (1 - minutes / 60)}
                    height={(5.4 * minutes) / 60}
                  />
                )}
              </g>
            ))}
          </g>
        ))}
        {[0, 6, 12, 18].map((h) => (
          <text key={h} x={left + h * cell} y={12 * row + 5.5}>
            {clock(h)}
          </text>
        ))}
      </svg>
      <figcaption className="field-help">
        A full bar is a whole hour of work, half a bar thirty minutes of it, none: stay out. Sun time, which clocks run
        ahead of in summer.
      </figcaption>
      <FoldedTable
        title="The hours in numbers"
        columns={['Month', 'Attic at 6:00', 'Hottest', 'Work 4:00 to 12:00', 'Work 12:00 to 20:00']}
      >
        {months.map((m, i) => (
          <tr key={shortMonths[i]}>
            <th scope="row">{shortMonths[i]}</th>
            <td>
              <Quantity value={m.attic[6] ?? 0} kind="temperature" />
            </td>
            <td>
              <Quantity value={Math.max(...m.attic)} kind="temperature" />
            </td>
            <td>{worked(m.minutes.slice(4, 12))}</td>
            <td>{worked(m.minutes.slice(12, 20))}</td>
          </tr>
        ))}
      </FoldedTable>
    </figure>
  );
}

function worked(minutes: readonly number[]): string {
  const sum = minutes.reduce((a, b) => a + b, 0);
  return `${Math.floor(sum / 60)} h ${sum % 60} min`;
}
