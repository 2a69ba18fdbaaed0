const clock = /^(\d{1,2})(?:[:h]?([0-5]\d))? ?(a\.?m\.?|p\.?m\.?)?$/i;
const hour = 3600;

/** `17:30`, `17h30`, `1730`, `5:30 pm`, `5pm`; seconds from midnight, undefined where it is none of them. A bare hour is left to its unit. */
export function readTimeOfDay(text: string): number | undefined {
  const m = clock.exec(text);
  if (!m || (m[2] === undefined && m[3] === undefined)) return undefined;
  const [hours, minutes] = [Number(m[1]), Number(m[2] ?? 0)];
  const half = m[3]?.[0]?.toLowerCase();
  if (half === undefined)
    return hours < 24 || (hours === 24 && minutes === 0) ? hours * hour + minutes * 60 : undefined;
  if (hours < 1 || hours > 12) return undefined;
  return ((hours % 12) + (half === 'p' ? 12 : 0)) * hour + minutes * 60;
}

/** `7.30` as clocks print it in some countries is half past seven and not 7.3 h; both, in words that parse. */
export function clockReadings(text: string): string[] {
  const [, hours, minutes] = /^(\d{1,2})\.([0-5]\d)$/.exec(text) ?? [];
  return hours === undefined ? [] : [`${hours}:${minutes}`, `${text} h`];
}

/** Anything else is printed, and refused by its field, as hours. */
export const isTimeOfDay = (seconds: number): boolean => seconds >= 0 && seconds <= 24 * hour;

/** Seconds from midnight to midnight as `17:30`, to the minute; with halves of the day as `5:30 pm`. */
export function printTimeOfDay(seconds: number, halves = false): string {
  const minutes = Math.round(seconds / 60);
  const [hours, rest] = [Math.floor(minutes / 60), String(minutes % 60).padStart(2, '0')];
  return halves ? `${((hours + 11) % 12) + 1}:${rest} ${hours % 24 < 12 ? 'am' : 'pm'}` : `${hours}:${rest}`;
}
