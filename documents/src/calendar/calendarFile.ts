import { foldedLine, textValue } from './lines.ts';

/** An event of a calendar; `when` are its lines of start, end and repeating. */
export type CalendarEvent = {
  readonly id: string;
  readonly when: readonly string[];
  readonly what: string;
  readonly words: string;
};

/** An iCalendar file (RFC 5545), lines folded and ended by CR LF. `stamp` is in UTC and comes from the plan, not the clock. */
export function calendarOf(stamp: string, events: readonly CalendarEvent[]): string {
  const lines = [
    'BEGIN:VCALENDAR',
    'VERSION:2.0',
    'PRODID:-//Kneewall//work plan//EN',
    'CALSCALE:GREGORIAN',
    ...events.flatMap((e) => [
      'BEGIN:VEVENT',
      `UID:${e.id}@kneewall.invalid`,
      `DTSTAMP:${stamp}`,
      ...e.when,
      `SUMMARY:${textValue(e.what)}`,
      `DESCRIPTION:${textValue(e.words)}`,
      'END:VEVENT',
    ]),
    'END:VCALENDAR',
  ];
  return lines.map((line) => `${foldedLine(line)}\r\n`).join('');
}
