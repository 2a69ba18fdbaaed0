import type { Plan } from '@kneewall/engine';
import { type CalendarEvent, calendarOf } from './calendarFile.ts';

/**
 * What keeps it going as an iCalendar file (RFC 5545): whole days, those of every month or year repeating. Undefined while
 * no day is known. Equal plans give equal bytes.
 */
export function upkeepCalendar(plan: Plan): string | undefined {
  const due = plan.trades.commissioning?.startUp.upkeep ?? [];
  const [first] = due;
  if (!first || !plan.trades.commissioning?.startUp.unit) return undefined;
  const stamp = `${day(first.day)}T000000Z`;
  return calendarOf(
    stamp,
    due.flatMap(({ task, day: on, everyMonths }): CalendarEvent[] => {
      const what = plan.tasks.find((t) => t.id === task);
      if (!what) return [];
      return [
        {
          id: `${task.replace('/', '.')}.${on}`,
          when: [
            `DTSTART;VALUE=DATE:${day(on)}`,
            ...(everyMonths === undefined ? [] : [`RRULE:FREQ=MONTHLY;INTERVAL=${everyMonths}`]),
          ],
          what: what.what,
          words: [...what.cautions, ...(what.doneWhen ?? [])].join('\n'),
        },
      ];
    }),
  );
}

/** `20270701`. */
const day = (date: string): string => date.replaceAll('-', '');
