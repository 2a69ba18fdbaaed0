import { inOrder, type ResolvedProject } from '@kneewall/project';
import { unresolved } from '../plan/outcome.ts';
import type { Scenario } from '../plan/scenario.ts';
import type { Tick, WorkFrame } from './result.ts';

type Work = ResolvedProject['work'];
/** Minutes from the plan's start to a day's midnight; not a number where it is no day. */
export type Since = (day: string) => number;

const perDay = 1440;

/** What is ticked off, by time. Entries without a task or a day of the calendar are left out by their path. */
export function ticksOf({ done }: Work, since: Since, s: Scenario): Tick[] {
  return inOrder(done)
    .map(([id, x]): Tick => {
      const path = `work.done.${id}`;
      if (x.task === undefined || x.task === '') return unresolved('missing', `${path}.task`);
      const [part, of, took, at] = [s.maybe(x.part), s.maybe(x.of), s.maybe(x.minutes), s.maybe(x.at)];
      const midnight = dayAt(x.day, since, `${path}.day`);
      return {
        ...{ path, task: x.task, day: x.day ?? '' },
        at: midnight + (at === undefined ? perDay : at / 60),
        share: part === undefined ? 1 : Math.min(1, part / Math.max(part, of ?? part)),
        ...(took === undefined ? {} : { took: took / 60 }),
      };
    })
    .sort((a, b) => a.at - b.at || (a.path < b.path ? -1 : 1));
}

/** Tasks put off, with the minute before which they are not planned. */
export const putOffOf = ({ putOff }: Work, since: Since) =>
  inOrder(putOff).flatMap(([id, x]) =>
    x.task === undefined ? [] : [{ task: x.task, until: dayAt(x.until, since, `work.putOff.${id}.until`) }],
  );

/** Spans in which power or water is off. */
export const offOf = ({ off }: Work, since: Since, s: Scenario) =>
  inOrder(off).map(([id, x]) => {
    const midnight = dayAt(x.day, since, `work.off.${id}.day`);
    const from = (s.maybe(x.from) ?? 0) / 60;
    const long = s.maybe(x.duration);
    return {
      what: s.choice(x.what),
      from: midnight + from,
      to: midnight + (long === undefined ? perDay : from + long / 60),
    };
  });

/** Hours of the day without noise, minutes; nothing where one of them is not entered. */
export function quietOf({ dates }: Work, s: Scenario): { readonly from: number; readonly to: number } | undefined {
  const [from, to] = [s.maybe(dates.quietFrom), s.maybe(dates.quietTo)];
  return from === undefined || to === undefined || from === to ? undefined : { from: from / 60, to: to / 60 };
}

export function dayAt(day: string | undefined, since: Since, path: string): number {
  const at = day === undefined ? Number.NaN : since(day);
  return Number.isFinite(at) ? at : unresolved('missing', path);
}

/** The end of the last window. */
export const lastMinute = ({ windows }: Pick<WorkFrame, 'windows'>): number => Math.max(...windows.map((w) => w.to));
