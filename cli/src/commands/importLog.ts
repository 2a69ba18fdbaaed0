import { dirname } from 'node:path';
import {
  clockSeen,
  faultWords,
  type LogEntry,
  type LogFault,
  type LogQuantity,
  type LogUnit,
  logQuantities,
  logQuantityIds,
  logUnits,
} from '@kneewall/project';
import { copyWhole, makeFolder, mayWrite, refusedFile } from '../disk.ts';
import { Refused } from '../exit.ts';
import { planLogAt, readLogAt } from '../logFile.ts';
import { problemLines } from '../print/problems.ts';
import { blobPath, readProject, withPart, writeProject } from '../projectFile.ts';

/** What the command line says of a log: `QUANTITY=COLUMN` or `QUANTITY=COLUMN:UNIT` for each column, and what only a person knows. */
export type LogOptions = {
  readonly map?: string[] | undefined;
  readonly days?: string | undefined;
  readonly clock?: string | undefined;
  readonly decimal?: string | undefined;
};

/** A log into a project, all or nothing: how it was understood is written into the project, and said. */
export async function importLog(file: string, into: string, options: LogOptions): Promise<void> {
  const { project } = await readProject(into);
  const asked = {
    name: (file.split(/[\\/]/).at(-1) ?? file).slice(0, 200),
    ...chosen('days', options.days, ['year-first', 'day-first', 'month-first']),
    ...chosen('clock', options.clock, ['standard', 'utc', 'europe', 'america']),
    ...chosen('decimal', options.decimal, ['point', 'comma']),
  } as LogEntry;
  const first = fromDisk(file, () => planLogAt(file, asked, project.site));
  const columns = { ...first.columns, ...mapped(options.map ?? []) };
  const read = fromDisk(file, () => readLogAt(file, { ...asked, columns }, project.site, onTerminal(file)));
  const { blob } = read;
  const entry: LogEntry = { ...asked, blob, columns };
  if (!read.value) throw new Refused(`${file} was not taken; ${into} is unchanged.`, read.problems);
  const { rows, faults, step } = read.value;
  const seen = options.clock === undefined ? clockSeen(read.value, 0) : undefined;
  const kept = seen === 'europe' || seen === 'america' ? { ...entry, clock: seen } : entry;
  await mayWrite(into);
  await makeFolder(dirname(blobPath(into, blob)));
  await copyWhole(file, blobPath(into, blob));
  await writeProject(
    into,
    withPart(project, ['logs', `log-${blob.slice(0, 12)}`], () => kept),
  );
  const lines = [
    `${into} has the log: ${rows} rows, ${step} s apart, its clock ${kept.clock ?? 'standard'}.`,
    ...logQuantityIds.flatMap((id) => {
      const c = columns[id];
      const unit = c?.unit as LogUnit | undefined;
      return c && unit ? [`  ${logQuantities[id].label}: “${c.name}”, ${logUnits[unit].label}`] : [];
    }),
    ...Object.entries(faults).map(
      ([fault, f]) => `  ${f.count} × ${faultWords[fault as LogFault]} (first in line ${f.firstLine})`,
    ),
    ...problemLines(read.problems),
  ];
  process.stdout.write(`${lines.join('\n')}\n`);
}

function fromDisk<T>(file: string, read: () => T): T {
  try {
    return read();
  } catch (thrown) {
    throw refusedFile('read', file, thrown);
  }
}

/** Says on a terminal how far the reading is, each tenth. */
function onTerminal(file: string): (done: number, total: number) => void {
  let tenth = 0;
  return (done, total) => {
    const now = Math.floor((10 * done) / total);
    if (now === tenth || process.stderr.isTTY !== true) return;
    tenth = now;
    process.stderr.write(`\r${file}: ${10 * now} %${now === 10 ? '\n' : ''}`);
  };
}

function chosen(name: string, value: string | undefined, options: readonly string[]): Record<string, string> {
  if (value === undefined) return {};
  if (!options.includes(value)) throw new Refused(`--${name} is one of ${options.join(', ')}.`);
  return { [name]: value };
}

type Mapped = NonNullable<LogEntry['columns']>;

/** `--map outdoor=Temp1:C`: the unit may be left out where the heading states it. */
function mapped(maps: readonly string[]): Mapped {
  return Object.fromEntries(
    maps.map((m) => {
      const [, id = '', name = '', unit] = /^(\w+)=(.+?)(?::([\w-]+))?$/.exec(m) ?? [];
      if (!(logQuantityIds as readonly string[]).includes(id) || name === '')
        throw new Refused(
          `--map is QUANTITY=COLUMN:UNIT, not "${m.slice(0, 60)}". Quantities: ${logQuantityIds.join(', ')}.`,
        );
      if (unit === undefined || !(unit in logUnits))
        throw new Refused(`--map ${id}=…:UNIT, one of ${Object.keys(logUnits).join(', ')}.`);
      return [id as LogQuantity, { name, unit }];
    }),
  );
}
