import type { WorkFrame } from './result.ts';

/** From a minute to before another, from the plan's start. */
export type Stretch = { readonly from: number; readonly to: number };

const perDay = 1440;
/** Hours at which people may be asked to work: the attic's cool ones begin early. Common practice, no source. */
const [earliestHour, latestHour] = [5, 21];
/** Windows begin at quarters of an hour and end at them. */
const quarter = 15;

/** Minutes that each clock hour of a day leaves in the attic, the day counted from the plan's first. */
export function atticHours(
  { start, atticMonths }: Pick<WorkFrame, 'start' | 'atticMonths'>,
  day: number,
): readonly number[] {
  const month = new Date(Date.parse(`${start}T00:00:00Z`) + day * 864e5).getUTCMonth();
  return atticMonths[month] ?? [];
}

type Day = {
  readonly day: number;
  /** Not before. */
  readonly from: number;
  /** Minutes at full pace of the parts, one after the other. */
  readonly lengths: readonly number[];
  /** Windows that are there or asked for already. */
  readonly taken: readonly Stretch[];
  /** Minutes of work that each clock hour leaves, 0 to 60; left out: all of it. */
  readonly minutes?: readonly number[] | undefined;
  readonly quiet?: { readonly from: number; readonly to: number } | undefined;
};

/** The soonest stretch of a day that holds as many of the parts as follow on from each other there; nothing where none fits. */
export function fitInDay(x: Day): (Stretch & { readonly parts: number }) | undefined {
  const midnight = x.day * perDay;
  const last = midnight + latestHour * 60;
  const first = Math.max(midnight + earliestHour * 60, Math.ceil(x.from / quarter) * quarter);
  for (let from = first; from < last; from += quarter) {
    let to = from;
    let parts = 0;
    for (const length of x.lengths) {
      const end = workedFrom(x, to, length, last);
      if (end === undefined) break;
      to = end;
      parts++;
    }
    if (parts > 0) return { from, to: Math.min(last, Math.ceil(to / quarter) * quarter), parts };
  }
  return undefined;
}

/** The minute at which work begun at another is done, without a break in it; undefined where something comes between. */
function workedFrom(x: Day, from: number, length: number, last: number): number | undefined {
  let done = 0;
  let at = from;
  while (done < length - 1e-9) {
    const pace = paceAt(x, at);
    if (at >= last || pace <= 0) return undefined;
    done += pace;
    at++;
  }
  return at;
}

/** Minutes of work that a minute of the clock leaves. */
function paceAt({ day, taken, minutes, quiet }: Day, at: number): number {
  const ofDay = at - day * perDay;
  if (taken.some((w) => w.from <= at && at < w.to)) return 0;
  const isQuiet =
    quiet &&
    (quiet.from < quiet.to ? ofDay >= quiet.from && ofDay < quiet.to : ofDay >= quiet.from || ofDay < quiet.to);
  if (isQuiet) return 0;
  return minutes ? (minutes[Math.floor(ofDay / 60)] ?? 0) / 60 : 1;
}
