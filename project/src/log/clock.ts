import { dayNumber, dayText, lastSunday, nthSunday } from './civil.ts';

/** What the clock of a log does in summer. `europe`, `america`: one hour ahead between their Sundays of change. */
export type LogClock = 'standard' | 'utc' | 'europe' | 'america';

/** When a year's summer begins and ends on the wall clock: seconds from 1970, the hour left out, and the hour told twice. */
export type Changes = { readonly spring: number; readonly autumn: number };

/** The changes of a year: the clock skips the hour from `spring` on, and tells the hour before `autumn` twice. `zone` in hours. */
export function changesOf(year: number, clock: 'europe' | 'america', zone: number): Changes {
  // Europe changes at 01:00 UTC everywhere; America at 02:00 by its own clock.
  if (clock === 'europe')
    return {
      spring: lastSunday(year, 3) * 86_400 + (1 + zone) * 3600,
      autumn: lastSunday(year, 10) * 86_400 + (2 + zone) * 3600,
    };
  return { spring: nthSunday(year, 3, 2) * 86_400 + 7200, autumn: nthSunday(year, 11, 1) * 86_400 + 7200 };
}

/** Brings moments of one file to local standard time, row after row. */
export type ClockReader = {
  /** Seconds of standard time; undefined for a moment that the clock never showed. */
  readonly standard: (wall: number) => number | undefined;
};

/** A reader of wall clocks; `zone` is standard time's distance from Greenwich, hours. Rows come in their order. */
export function clockReader(clock: LogClock, zone: number): ClockReader {
  if (clock === 'standard') return { standard: (wall) => wall };
  if (clock === 'utc') return { standard: (wall) => wall + zone * 3600 };
  let from = 1;
  let to = 0;
  let changes: Changes = { spring: 0, autumn: 0 };
  let last = Number.NEGATIVE_INFINITY;
  let second = false;
  const standard = (wall: number): number | undefined => {
    if (wall < from || wall >= to) {
      const year = Number(dayText(Math.floor(wall / 86_400)).slice(0, 4));
      from = dayNumber(year, 1, 1) * 86_400;
      to = dayNumber(year + 1, 1, 1) * 86_400;
      changes = changesOf(year, clock, zone);
      second = false;
    }
    const { spring, autumn } = changes;
    const twice = wall >= autumn - 3600 && wall < autumn;
    // The hour told twice: once the clock has gone back within it, it is standard time.
    if (twice && wall < last) second = true;
    last = wall;
    if (wall >= spring && wall < spring + 3600) return undefined;
    return wall >= spring && (wall < autumn - 3600 || (twice && !second)) ? wall - 3600 : wall;
  };
  return { standard };
}
