/** Days from 1 January 1970 to a day of the Gregorian calendar. */
export function dayNumber(year: number, month: number, day: number): number {
  const y = month <= 2 ? year - 1 : year;
  const era = Math.floor(y / 400);
  const ofEra = y - era * 400;
  const ofYear = Math.floor((153 * (month + (month > 2 ? -3 : 9)) + 2) / 5) + day - 1;
  return era * 146_097 + ofEra * 365 + Math.floor(ofEra / 4) - Math.floor(ofEra / 100) + ofYear - 719_468;
}

/** The day so many days after 1 January 1970, as `2026-11-28`. */
export function dayText(days: number): string {
  const z = days + 719_468;
  const era = Math.floor(z / 146_097);
  const ofEra = z - era * 146_097;
  const yearOfEra = Math.floor(
    (ofEra - Math.floor(ofEra / 1460) + Math.floor(ofEra / 36_524) - Math.floor(ofEra / 146_096)) / 365,
  );
  const ofYear = ofEra - (365 * yearOfEra + Math.floor(yearOfEra / 4) - Math.floor(yearOfEra / 100));
  const m = Math.floor((5 * ofYear + 2) / 153);
  const month = m < 10 ? m + 3 : m - 9;
  const day = ofYear - Math.floor((153 * m + 2) / 5) + 1;
  const year = yearOfEra + era * 400 + (month <= 2 ? 1 : 0);
  return `${year}-${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`;
}

const longMonths = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
/** Whether a month has such a day. */
export const isDay = (year: number, month: number, day: number): boolean =>
  month >= 1 &&
  month <= 12 &&
  day >= 1 &&
  day <=
    (longMonths[month - 1] ?? 0) + (month === 2 && year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 1 : 0);

/** 0 on a Sunday. */
const weekday = (days: number): number => (((days + 4) % 7) + 7) % 7;

/** The last Sunday of a month, and the n-th, as days from 1970. */
export function lastSunday(year: number, month: number): number {
  const last = dayNumber(year, month, longMonths[month - 1] ?? 31);
  return last - weekday(last);
}
export function nthSunday(year: number, month: number, n: number): number {
  const first = dayNumber(year, month, 1);
  return first + ((7 - weekday(first)) % 7) + 7 * (n - 1);
}
