import type { Stay } from './workCalendar.ts';

const minutesOfDay = 1440;

/** A minute of the plan as clocks show it: 18:05. */
export const clock = (minute: number): string => {
  const m = Math.round(minute) % minutesOfDay;
  return `${Math.floor(m / 60)}:${String(m % 60).padStart(2, '0')}`;
};

const dayWords = new Intl.DateTimeFormat('en', {
  weekday: 'long',
  day: 'numeric',
  month: 'long',
  timeZone: 'UTC',
});

/** The day of a date as people say it: Saturday, July 3. */
export const dayName = (day: string): string => dayWords.format(Date.parse(`${day}T00:00:00Z`));

/** The part of a task that a stay does; nothing where it is the whole. */
export const partWords = ({ part, last, parts }: Stay): string =>
  parts === 1 ? '' : part === last ? `part ${part} of ${parts}` : `parts ${part} to ${last} of ${parts}`;

export const placeWords: Readonly<Record<string, string>> = {
  attic: 'in the attic',
  roof: 'on the roof',
  outside: 'outside',
  inside: 'inside',
};
