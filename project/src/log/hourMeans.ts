import type { LogTable, LogValues } from './logTable.ts';
import type { LogQuantity } from './quantities.ts';

/** A log by the hour: row h is the hour that begins at `first` + h, hours from 1970 in local standard time. NaN where less than half is known. */
export type LogHours = {
  readonly first: number;
  readonly count: number;
  readonly columns: Readonly<Partial<Record<LogQuantity, Float64Array>>>;
  /** What readings say at the end of each hour: of ten minutes on both sides, or half way between hours. */
  readonly ends: Readonly<Partial<Record<LogQuantity, Float64Array>>>;
};

/** Hours over which a meter's step is spread at most; longer ones say too little of when. */
const spreadMost = 6;

/** Means by the hour: readings count for their row's time, energies for all of the time since the row before. */
export function hourMeans(table: LogTable): LogHours {
  const { time, step } = table;
  const first = Math.floor((time[0] ?? 0) / 3600);
  const count = time.length === 0 ? 0 : Math.floor((time.at(-1) ?? 0) / 3600) - first + 1;
  const columns = Object.entries(table.columns).map(([id, x]) => {
    const sum = new Float64Array(count);
    const weight = new Float64Array(count);
    if (table.spans.includes(id as LogQuantity)) spread(time, x, first, sum, weight);
    else
      for (let i = 0; i < x.length; i++) {
        const value = x[i] ?? 0;
        if (Number.isNaN(value)) continue;
        const h = Math.floor((time[i] ?? 0) / 3600) - first;
        sum[h] = (sum[h] ?? 0) + value * step;
        weight[h] = (weight[h] ?? 0) + step;
      }
    return [
      id,
      Float64Array.from(sum, (s, h) => ((weight[h] ?? 0) >= 1800 ? s / (weight[h] ?? 0) : Number.NaN)),
    ] as const;
  });
  const read = columns.filter(([id]) => !table.spans.includes(id as LogQuantity));
  const ends = read.map(([id, means]) => [id, endsOf(table, table.columns[id as LogQuantity] ?? means, means, first)]);
  return { first, count, columns: Object.fromEntries(columns), ends: Object.fromEntries(ends) };
}

/** Seconds on both sides of an hour's end in which readings count for it. */
const near = 600;

function endsOf({ time, step }: LogTable, x: LogValues, means: Float64Array, first: number): Float64Array {
  if (step > near) return means.map((m, h) => (m + (means[h + 1] ?? m)) / 2);
  const sum = new Float64Array(means.length);
  const count = new Float64Array(means.length);
  for (let i = 0; i < x.length; i++) {
    const value = x[i] ?? Number.NaN;
    const end = Math.round((time[i] ?? 0) / 3600);
    if (Number.isNaN(value) || Math.abs((time[i] ?? 0) - end * 3600) > near) continue;
    const h = end - first - 1;
    sum[h] = (sum[h] ?? 0) + value;
    count[h] = (count[h] ?? 0) + 1;
  }
  return means.map((m, h) => ((count[h] ?? 0) > 0 ? (sum[h] ?? 0) / (count[h] ?? 1) : (m + (means[h + 1] ?? m)) / 2));
}

/** Lays each row's energy on the hours between it and the row before. */
function spread(time: Float64Array, x: LogValues, first: number, sum: Float64Array, weight: Float64Array): void {
  for (let i = 1; i < x.length; i++) {
    const value = x[i] ?? 0;
    const from = time[i - 1] ?? 0;
    const to = time[i] ?? 0;
    if (Number.isNaN(value) || to - from > spreadMost * 3600) continue;
    for (let h = Math.floor(from / 3600); h * 3600 < to; h++) {
      const seconds = Math.min(to, (h + 1) * 3600) - Math.max(from, h * 3600);
      sum[h - first] = (sum[h - first] ?? 0) + value * seconds;
      weight[h - first] = (weight[h - first] ?? 0) + seconds;
    }
  }
}
