import { dayNumber, isDay } from './civil.ts';

/** How days are written. `day-first` and `month-first` look alike until a number above 12 turns up: then one must be asked. */
export type DateOrder = 'year-first' | 'day-first' | 'month-first' | 'seconds' | 'milliseconds';

/** A moment as it stands in a file: seconds from 1970 on that file's own clock, and its distance from Greenwich where it says so, seconds. */
export type Moment = { readonly seconds: number; readonly offset?: number };

const written =
  /^(\d{1,4})([-/. ])(\d{1,2})\2(\d{1,4})(?:[T ,]+(\d{1,2}):(\d{2})(?::(\d{2})(?:[.,]\d+)?)?\s*([AaPp]\.?[Mm]\.?)?)?\s*(Z|UTC|GMT|[+-]\d{2}:?\d{2}|[+-]\d{2})?$/;

/** The three numbers of a day and the rest; undefined for what is no date. */
export function partsOfDate(
  text: string,
): { readonly numbers: readonly [number, number, number]; readonly mark: string } | undefined {
  const m = written.exec(text.trim());
  return m ? { numbers: [Number(m[1]), Number(m[3]), Number(m[4])], mark: m[2] ?? '' } : undefined;
}

/** Reads a moment; undefined for what is none, a day that does not exist among them. */
export function momentOf(text: string, order: DateOrder): Moment | undefined {
  const t = text.trim();
  if (order === 'seconds' || order === 'milliseconds') {
    const n = /^\d{9,14}(\.\d+)?$/.test(t) ? Number(t) : Number.NaN;
    return Number.isNaN(n) ? undefined : { seconds: order === 'seconds' ? n : n / 1000, offset: 0 };
  }
  const m = written.exec(t);
  if (!m) return undefined;
  const [a, b, c] = [Number(m[1]), Number(m[3]), Number(m[4])];
  const [y, month, day] = order === 'year-first' ? [a, b, c] : order === 'day-first' ? [c, b, a] : [c, a, b];
  const year = y < 100 ? 2000 + y : y;
  if (year < 1990 || year > 2100 || !isDay(year, month, day)) return undefined;
  const half = m[8]?.[0]?.toLowerCase();
  const shown = Number(m[5] ?? 0);
  if (half !== undefined && (shown < 1 || shown > 12)) return undefined;
  const hour = half === undefined ? shown : (shown % 12) + (half === 'p' ? 12 : 0);
  const minute = Number(m[6] ?? 0);
  const second = Number(m[7] ?? 0);
  if (hour > 24 || minute > 59 || second > 60 || (hour === 24 && minute > 0)) return undefined;
  const seconds = dayNumber(year, month, day) * 86_400 + hour * 3600 + minute * 60 + second;
  const offset = offsetOf(m[9]);
  return offset === undefined ? { seconds } : { seconds, offset };
}

function offsetOf(zone: string | undefined): number | undefined {
  if (zone === undefined) return undefined;
  if (/^[A-Z]/.test(zone)) return 0;
  const hours = Number(zone.slice(1, 3));
  const minutes = Number(zone.slice(3).replace(':', '') || 0);
  return (zone.startsWith('-') ? -1 : 1) * (hours * 3600 + minutes * 60);
}

/** The ways in which all of these may be read: one way is certain, two must be asked, none is no column of dates. */
export function ordersOf(texts: readonly string[]): readonly DateOrder[] {
  const orders: readonly DateOrder[] = ['year-first', 'day-first', 'month-first', 'seconds', 'milliseconds'];
  const held = orders.filter((o) => texts.every((t) => momentOf(t, o) !== undefined && fits(t, o)));
  // Days with dots between are day first: nobody writes the month first so (common practice).
  if (held.includes('day-first') && held.includes('month-first') && texts.every((t) => partsOfDate(t)?.mark === '.'))
    return ['day-first'];
  return held;
}

/** Four figures are a year, and stand where the order has it; moments in numbers are told apart by their size. */
function fits(text: string, order: DateOrder): boolean {
  if (order === 'seconds') return Number(text) < 1e11;
  if (order === 'milliseconds') return Number(text) >= 1e11;
  const a = partsOfDate(text)?.numbers[0] ?? 0;
  return order === 'year-first' ? a > 31 : a <= 31;
}
