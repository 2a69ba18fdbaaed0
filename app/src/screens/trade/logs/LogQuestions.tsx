import type { LogEntry, LogPlan } from '@kneewall/project';

const dayOrders = { 'year-first': 'Year first', 'day-first': 'Day first', 'month-first': 'Month first' } as const;
const clocks = {
  standard: 'Standard time all year',
  utc: 'Greenwich time (UTC)',
  europe: 'As in Europe: an hour ahead in summer',
  america: 'As in North America: an hour ahead in summer',
} as const;

type Props = {
  readonly entry: LogEntry;
  readonly dialect: NonNullable<LogPlan['dialect']>;
  readonly change: (entry: LogEntry) => void;
};

/** What only a person can say of a log: its clock, and where the file leaves it open, how days and numbers are written. */
export function LogQuestions({ entry, dialect, change }: Props) {
  return (
    <div className="log-asked">
      <label>
        What its clock shows
        <select
          value={entry.clock ?? 'standard'}
          onChange={(e) => change({ ...entry, clock: e.currentTarget.value as keyof typeof clocks })}
        >
          {Object.entries(clocks).map(([id, words]) => (
            <option key={id} value={id}>
              {words}
            </option>
          ))}
        </select>
      </label>
      {dialect.orders.length > 1 && (
        <label>
          How days are written
          <select
            value={entry.days ?? ''}
            onChange={(e) => change({ ...entry, days: e.currentTarget.value as keyof typeof dayOrders })}
          >
            {entry.days === undefined && <option value="">Choose</option>}
            {dialect.orders
              .filter((o) => o in dayOrders)
              .map((o) => (
                <option key={o} value={o}>
                  {dayOrders[o as keyof typeof dayOrders]}
                </option>
              ))}
          </select>
        </label>
      )}
      {dialect.decimalUnsure && (
        <label>
          The point in numbers
          <select
            value={entry.decimal ?? ''}
            onChange={(e) => change({ ...entry, decimal: e.currentTarget.value as 'point' | 'comma' })}
          >
            {entry.decimal === undefined && <option value="">Choose</option>}
            <option value="point">Decimal point</option>
            <option value="comma">Thousands; decimals follow a comma</option>
          </select>
        </label>
      )}
    </div>
  );
}
