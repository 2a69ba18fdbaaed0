import { asked, type Problem, refused } from '../document/problem.ts';
import type { Project } from '../schema/project.ts';
import type { DateOrder } from './dates.ts';
import { type Dialect, sniffLog } from './dialect.ts';
import { type LogReading, logReader } from './logReader.ts';
import type { LogTable } from './logTable.ts';
import { type LogEnds, type LogText, logTextOf } from './logText.ts';
import { type LogColumn, type LogColumns, proposeColumns } from './propose.ts';
import { type LogQuantity, type LogUnit, logQuantityIds, logUnits } from './quantities.ts';
import { suspicions } from './suspicions.ts';

export type LogEntry = NonNullable<Project['logs']>[string];

/** How a log would be read as its entry stands: what is open is a refused problem, and then there is no reading. */
export type LogPlan = {
  readonly dialect?: Dialect;
  readonly columns: LogColumns;
  readonly reading?: LogReading;
  readonly problems: readonly Problem[];
};

/** Standard time's distance from Greenwich, hours: stated, or after the longitude. */
function zoneOf(site: Project['site']): number {
  const stated = site?.timeZone?.value ?? Math.round(Number(site?.longitude?.value ?? 0) / 15);
  return typeof stated === 'number' ? stated : stated.likely;
}

/** Looks at the beginning and the end of a log. What the entry does not say is proposed; what cannot be known is asked. */
export function planLog({ head, tail }: LogEnds, entry: LogEntry, site: Project['site']): LogPlan {
  const { dialect, problem } = sniffLog(head, tail);
  if (!dialect) return { columns: {}, problems: problem ? [problem] : [] };
  const stated = statedColumns(entry, dialect);
  const columns = Object.keys(stated.columns).length > 0 ? stated.columns : proposeColumns(dialect);
  const problems = [...stated.problems, ...openQuestions(dialect, entry)];
  const order = dialect.orders.length === 1 ? dialect.orders[0] : dialect.orders.find((o) => o === entry.days);
  if (problems.some((p) => p.grade === 'refused') || !order) return { dialect, columns, problems };
  const read: Dialect =
    entry.decimal === undefined ? dialect : { ...dialect, decimal: entry.decimal === 'comma' ? ',' : '.' };
  return {
    dialect,
    columns,
    problems,
    reading: { dialect: read, order, clock: entry.clock ?? 'standard', zone: zoneOf(site), columns },
  };
}

/** What only a person can say. */
function openQuestions(dialect: Dialect, entry: LogEntry): Problem[] {
  const problems: Problem[] = [];
  const first = dialect.sample[0]?.[dialect.time[0] ?? 0] ?? '';
  if (dialect.orders.length === 0)
    problems.push(refused('time-slip', [], 'The days of this log are written in more than one way.', { found: first }));
  else if (dialect.orders.length > 1 && !dialect.orders.some((o: DateOrder) => o === entry.days))
    problems.push(
      refused(
        'time-slip',
        [],
        `Say how “${first}” is meant: the day first, or the month first. Both fit every row looked at.`,
        {
          found: first,
        },
      ),
    );
  if (dialect.decimalUnsure && entry.decimal === undefined)
    problems.push(
      refused('wrong-unit', [], 'Say what the point in numbers such as 1.000 means: a decimal mark, or thousands.'),
    );
  return problems;
}

/** Columns as the entry names them; one that the file does not have is refused. */
function statedColumns(entry: LogEntry, dialect: Dialect): { columns: LogColumns; problems: Problem[] } {
  const columns: Partial<Record<LogQuantity, LogColumn>> = {};
  const problems: Problem[] = [];
  for (const id of logQuantityIds) {
    const { name, unit } = entry.columns?.[id] ?? {};
    if (name === undefined || name === '') continue;
    if (!dialect.heads.includes(name))
      problems.push(refused('missing-column', [name], 'The log has no column of that heading.', { found: name }));
    else if (unit === undefined || !(unit in logUnits))
      problems.push(refused('wrong-unit', [name], 'Say in which unit this column is.', { found: unit }));
    else columns[id] = { name, unit: unit as LogUnit };
  }
  return { columns, problems };
}

/** What was read, or what keeps it from being read. */
export type LogRead = { readonly value?: LogTable; readonly problems: readonly Problem[] };
type Tell = (done: number, total: number) => void;

/** Reads a log that is at hand as text. */
export const readLog = (text: string, entry: LogEntry, site: Project['site']): LogRead =>
  readLogText(logTextOf(text), entry, site);

/** Reads a log as its entry says, piece by piece. `tell` hears how far it is. Nothing is taken while a question is open. */
export function readLogText(log: LogText, entry: LogEntry, site: Project['site'], tell: Tell = () => {}): LogRead {
  const { reading, problems } = planLog(log.ends, entry, site);
  if (!reading) return { problems };
  const reader = logReader(reading);
  for (const { text, done } of log.pieces()) {
    reader.add(text);
    tell(done, log.size);
  }
  const value = reader.end();
  if (value.time.length < 2)
    return { problems: [...problems, refused('missing-hours', [], 'No two rows of this log could be read.')] };
  const found = suspicions(value);
  if (value.step > 3600 * 1.5)
    found.push(
      asked('missing-hours', [], 'Its rows are more than an hour apart: only sums of days can be told from it.'),
    );
  return { value: { ...value, asks: found.map((p) => p.mend) }, problems: [...problems, ...found] };
}
