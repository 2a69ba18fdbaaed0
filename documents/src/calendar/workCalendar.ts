import { deadlinesOf, type Plan } from '@kneewall/engine';
import { type CalendarEvent, calendarOf } from './calendarFile.ts';

/** An event: a task in one window, all its parts there together. Minutes from the plan's start. */
type Event = {
  readonly id: string;
  readonly what: string;
  readonly words: string;
  readonly from: number;
  readonly to: number;
};

/**
 * The plan of work as an iCalendar file (RFC 5545): one event for each task in each window, in UTC, its end exclusive.
 * Undefined while there is no plan. Equal plans give equal bytes: the stamp is the plan's first day, not the clock's.
 */
export function workCalendar(plan: Plan): string | undefined {
  const { schedule } = plan.trades;
  if (!schedule?.frame.ok || !schedule.work.ok || schedule.work.value.parts.length === 0) return undefined;
  const { start, ahead } = schedule.frame.value;
  const utc = (minute: number): string => stamp(Date.parse(`${start}T00:00:00Z`) + (minute - 60 * ahead) * 60_000);
  return calendarOf(utc(0), [
    ...eventsOf(plan).map(({ id, what, words, from, to }) => ({
      ...{ id, what, words },
      when: [`DTSTART:${utc(from)}`, `DTEND:${utc(to)}`],
    })),
    ...lastDays(plan, start),
  ]);
}

/** Last days of what takes no window and is not done yet, whole days. */
const lastDays = (plan: Plan, start: string): CalendarEvent[] =>
  (plan.trades.schedule ? deadlinesOf(plan.trades.schedule) : []).flatMap(({ task, by, done }): CalendarEvent[] => {
    const what = plan.tasks.find((t) => t.id === task);
    if (!what || done !== undefined) return [];
    const day = stamp(Date.parse(`${start}T00:00:00Z`) + (by - 1) * 60_000).slice(0, 8);
    const words = [...what.cautions, ...(what.doneWhen ?? [])].join('\n');
    return [
      {
        id: `${task.replace('/', '.')}.last-day`,
        when: [`DTSTART;VALUE=DATE:${day}`],
        what: `Last day: ${what.what}`,
        words,
      },
    ];
  });

function eventsOf(plan: Plan): Event[] {
  return workByWindow(plan).flatMap(({ window, stays }) =>
    stays.map((s): Event => {
      const stops = s.safeStops.length > 0 ? [`Stop only at: ${s.safeStops.join('; ')}`] : [];
      return {
        id: `${s.task.replace('/', '.')}.${s.part}.${window}`,
        what: s.what,
        words: [...s.cautions, ...stops].join('\n'),
        from: s.from,
        to: s.to,
      };
    }),
  );
}

/** A task in one window, its parts there one after the other. Minutes from the plan's start. */
export type Stay = {
  readonly task: string;
  readonly what: string;
  readonly people: number;
  readonly place: string;
  readonly part: number;
  readonly last: number;
  readonly parts: number;
  readonly from: number;
  readonly to: number;
  readonly safeStops: readonly string[];
  readonly cautions: readonly string[];
};

type WorkOfWindow = { window: string; day: string; from: number; to: number; stays: Stay[] };

/** What is done in each window that has work, in order. Empty while there is no plan; `orFirst`: the first one stands in for it. */
export function workByWindow(plan: Plan, orFirst = false): WorkOfWindow[] {
  const { schedule } = plan.trades;
  const work = schedule?.work.ok ? schedule.work.value : orFirst ? schedule?.first : undefined;
  if (!schedule?.frame.ok || !work) return [];
  const { parts } = work;
  const tasks = new Map(plan.tasks.map((t) => [t.id, t]));
  return schedule.frame.value.windows.flatMap(({ id, day, from, to }) => {
    const stays: Stay[] = [];
    for (const p of parts) {
      const task = tasks.get(p.task);
      if (!task || p.from < from || p.from >= to) continue;
      const before = stays.findLastIndex((s) => s.task === p.task);
      const same = stays[before];
      if (same && same.to === p.from) stays[before] = { ...same, last: p.part, to: p.to };
      else
        stays.push({
          ...{ task: p.task, what: task.what, people: task.people, place: task.place ?? 'attic' },
          ...{ part: p.part, last: p.part, parts: p.parts, from: p.from, to: p.to },
          ...{ safeStops: task.safeStops, cautions: task.cautions },
        });
    }
    return stays.length === 0 ? [] : [{ window: id, day, from, to, stays }];
  });
}

/** `20270703T110000Z`. */
const stamp = (ms: number): string => `${new Date(ms).toISOString().slice(0, 19).replaceAll(/[-:]/g, '')}Z`;
