import { dayText } from './civil.ts';
import { changesOf, type LogClock } from './clock.ts';
import type { LogTable } from './logTable.ts';

const yearOf = (seconds: number): number => Number(dayText(Math.floor(seconds / 86_400)).slice(0, 4));

/** How many rows begin from `from` up to `to`. */
function rowsIn(time: Float64Array, from: number, to: number): number {
  const below = (limit: number): number => {
    let low = 0;
    let high = time.length;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((time[middle] ?? 0) < limit) low = middle + 1;
      else high = middle;
    }
    return low;
  };
  return below(to) - below(from);
}

/**
 * What a log read as standard time says about its clock where it passes a change: `europe` or `america` where on their Sunday an
 * hour is left out in spring, or an hour's rows come twice in autumn; `standard` where the hours are all there once. Undefined where
 * it passes no change. A proposal: a gap may look the same. `zone` in hours.
 */
export function clockSeen({ time, step, faults }: LogTable, zone: number): LogClock | undefined {
  const first = time[0] ?? 0;
  const last = time.at(-1) ?? 0;
  const perHour = 3600 / Math.max(step, 1);
  let passes = false;
  for (let year = yearOf(first); year <= yearOf(last); year++)
    for (const clock of ['europe', 'america'] as const) {
      const { spring, autumn } = changesOf(year, clock, zone);
      const beside = (t: number): boolean =>
        first < t - 7200 && last > t + 7200 && rowsIn(time, t - 3600, t) > 0 && rowsIn(time, t + 3600, t + 7200) > 0;
      if (beside(spring)) {
        passes = true;
        if (rowsIn(time, spring, spring + 3600) === 0) return clock;
      } else if (beside(autumn)) {
        passes = true;
        const twice = faults['twice-the-moment']?.count ?? 0;
        if (twice >= 0.5 * perHour && twice <= 1.5 * perHour) return clock;
      }
    }
  return passes ? 'standard' : undefined;
}
