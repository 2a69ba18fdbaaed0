import type { Project } from '@kneewall/project';
import type { Change } from '../../../session/act.ts';
import { entryId, orderAfter } from '../../../session/newIds.ts';

/** A tick: a task, how far, and the minutes of work it took where somebody counted. */
export type TickedOff = {
  readonly task: string;
  readonly part?: number;
  readonly of?: number;
  readonly minutes?: number;
};

type Entry = { readonly order?: string | undefined };
const pad = (n: number): string => String(n).padStart(2, '0');
const dayOf = (t: Date): string => `${t.getFullYear()}-${pad(t.getMonth() + 1)}-${pad(t.getDate())}`;

const lastOrder = (entries: Readonly<Record<string, Entry>>): string | undefined =>
  Object.values(entries)
    .map((e) => e.order ?? '')
    .sort()
    .at(-1);

/** What a tick writes: the day and the time of day by this device's clock. */
export function tickChanges(project: Project, { task, part, of, minutes }: TickedOff, now: Date): Change[] {
  const done = project.work?.done ?? {};
  const entry = {
    order: orderAfter(lastOrder(done)),
    task,
    day: dayOf(now),
    at: { value: 3600 * now.getHours() + 60 * now.getMinutes(), known: 'measured' },
    ...(part === undefined || of === undefined
      ? {}
      : { part: { value: part, known: 'measured' }, of: { value: of, known: 'measured' } }),
    ...(minutes === undefined ? {} : { minutes: { value: 60 * minutes, known: 'measured' } }),
  };
  return [{ path: ['work', 'done', entryId('tick', done)], after: entry }];
}

/** “Not today”: the task waits for the day after the one it stands on, or after today where that is later. */
export function putOffChanges(project: Project, task: string, planned: string | undefined, now: Date): Change[] {
  const putOff = project.work?.putOff ?? {};
  const today = dayOf(now);
  const from = planned !== undefined && planned > today ? planned : today;
  const until = new Date(Date.parse(`${from}T00:00:00Z`) + 864e5).toISOString().slice(0, 10);
  const had = Object.entries(putOff).find(([, p]) => p.task === task);
  if (had) return [{ path: ['work', 'putOff', had[0], 'until'], after: until }];
  const entry = { order: orderAfter(lastOrder(putOff)), task, until };
  return [{ path: ['work', 'putOff', entryId('put-off', putOff)], after: entry }];
}

/** How much of a task the document has as done, 0 to 1: known before the plan is made again. */
export const doneShare = (project: Project, task: string): number =>
  Math.max(
    0,
    ...Object.values(project.work?.done ?? {}).map((tick) =>
      tick.task !== task
        ? 0
        : tick.part === undefined
          ? 1
          : likely(tick.part) / Math.max(likely(tick.part), likely(tick.of ?? tick.part)),
    ),
  );

const likely = ({ value }: { readonly value: number | { readonly likely: number } }): number =>
  typeof value === 'number' ? value : value.likely;

/** Ticks of a task taken back, all of them. */
export const untickChanges = (project: Project, task: string): Change[] =>
  Object.entries(project.work?.done ?? {}).flatMap(([id, tick]) =>
    tick.task === task ? [{ path: ['work', 'done', id], after: undefined }] : [],
  );
