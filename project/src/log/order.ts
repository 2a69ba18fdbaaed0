import { countFault } from './faults.ts';
import type { LogTable, LogValues } from './logTable.ts';

/**
 * Puts rows in the order of time, keeps the first of rows with one moment, finds the step between most rows, and counts gaps.
 * `lines`: where in the file each row stands.
 */
export function inOrder(table: LogTable, lines: Float64Array): LogTable {
  const { time, faults } = table;
  const n = time.length;
  let sorted = true;
  for (let i = 1; i < n; i++)
    if (!((time[i] ?? 0) > (time[i - 1] ?? 0))) {
      sorted = false;
      if ((time[i] ?? 0) < (time[i - 1] ?? 0)) countFault(faults, 'out-of-order', lines[i] ?? 0);
    }
  const kept = sorted ? undefined : rowsInOrder(table, lines);
  const pick = <A extends LogValues>(x: A): A =>
    kept ? (x.slice(0, kept.length).map((_, i) => x[kept[i] ?? 0] ?? 0) as A) : x;
  const columns = Object.fromEntries(Object.entries(table.columns).map(([id, x]) => [id, pick(x)]));
  const made = { ...table, time: pick(time), columns };
  const lineOf = pick(lines);
  const step = usualStep(made.time);
  for (let i = 1; i < made.time.length; i++)
    if ((made.time[i] ?? 0) - (made.time[i - 1] ?? 0) > 3 * step + 1) countFault(faults, 'gap', lineOf[i] ?? 0);
  return { ...made, step };
}

/** Rows by time, the first of those with one moment. */
function rowsInOrder({ time, faults }: LogTable, lines: Float64Array): Int32Array {
  const index = Int32Array.from(time, (_, i) => i).sort((a, b) => (time[a] ?? 0) - (time[b] ?? 0) || a - b);
  return index.filter((at, i) => {
    if (i === 0 || (time[at] ?? 0) > (time[index[i - 1] ?? 0] ?? 0)) return true;
    countFault(faults, 'twice-the-moment', lines[at] ?? 0);
    return false;
  });
}

/** The middle of the steps, seconds; 0 for fewer than two rows. */
function usualStep(time: Float64Array): number {
  const steps = Float64Array.from(
    { length: Math.max(0, Math.min(time.length, 5000) - 1) },
    (_, i) => (time[i + 1] ?? 0) - (time[i] ?? 0),
  );
  return steps.sort()[steps.length >> 1] ?? 0;
}
