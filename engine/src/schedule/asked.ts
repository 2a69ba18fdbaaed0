import { required, unresolved } from '../plan/outcome.ts';
import { type DraftOf, type Found, telling } from '../plan/telling.ts';
import { deadlinesOf } from './deadlines.ts';
import type { ScheduleResult, Shortage, WorkFrame } from './result.ts';
import { lastMinute } from './ticks.ts';

type Sum = NonNullable<ScheduleResult['sum']>;

/** What is entered and cannot be used as it stands: deliveries too late or without a day, ticks of no task. */
export function askedOf(result: ScheduleResult): Found[] {
  const { frame, sum } = result;
  if (!frame.ok || !sum) return [];
  return [
    ...sum.within.map(({ task }) => inTime(task, result, frame.value)),
    ...late(frame.value, sum),
    ...undated(frame.value, sum),
    ...sum.short.map((s) => tooLittle(s, result, frame.value)),
    ...unknownTicks(sum),
  ];
}

const named = ({ names }: Sum, tasks: readonly string[]) => ({ tasks: tasks.map((id) => ({ name: names[id] ?? id })) });

/** Days left until a task that takes no window is to be done: from what it comes after, the last tick or the day planned from. */
function inTime(task: string, { work, sum }: ScheduleResult, frame: WorkFrame): Found {
  const known = deadlinesOf({ work, ...(sum ? { sum } : {}) }).find((d) => d.task === task);
  const day = (minute: number): string => dayOf(frame, minute);
  const facts = {
    task: sum?.names[task] ?? task,
    ...(known ? { by: day(known.by - 1), from: day(known.from), days: known.days } : {}),
    done: known?.done === undefined ? 0 : 1,
  };
  return telling('schedule', task)({ ...within, id: `within:${task}`, facts }, (rec) => {
    required(work);
    if (!known) return unresolved('missing', 'work.windows');
    const now = known.done ?? Math.max(known.from, frame.planFrom ?? 0, frame.ticks.at(-1)?.at ?? 0);
    const left = 60 * (known.by - now);
    rec.step('left', 'solved', {}, left, 's', within.source);
    return left;
  });
}

function late(frame: WorkFrame, sum: Sum): Found[] {
  const { deliveries, doneBy } = frame;
  return sum.late.flatMap(({ delivery, tasks }): Found[] => {
    const own = deliveries.find((d) => d.id === delivery);
    if (own?.at === undefined) return [];
    const after = 60 * (own.at - (doneBy ?? lastMinute(frame)));
    const facts = { name: own.name, entered: doneBy === undefined ? 0 : 1, ...named(sum, tasks) };
    return [
      telling('schedule', `work.deliveries.${delivery}`)({ ...delivered, id: `delivery:${delivery}`, facts }, (rec) => {
        rec.step('after', 'solved', {}, after, 's', delivered.source);
        return after;
      }),
    ];
  });
}

/** Nobody knows when it comes: the plan takes it that nothing of it has. */
const undated = (frame: WorkFrame, sum: Sum): Found[] =>
  sum.undated.map(({ delivery, tasks }) => {
    const facts = { name: frame.deliveries.find((d) => d.id === delivery)?.name ?? delivery, ...named(sum, tasks) };
    const at = `work.deliveries.${delivery}.day`;
    return telling('schedule', at)({ ...delivered, id: `no-day:${delivery}`, facts }, () => unresolved('missing', at));
  });

/** How much of a good is missing when all its deliveries have come, and by the day on which the first task that needs it begins. */
function tooLittle(
  { id, what, kind, wanted, comes, tasks, at }: Shortage,
  { work, sum }: ScheduleResult,
  frame: WorkFrame,
) {
  const parts = work.ok ? work.value.parts.filter((p) => tasks.includes(p.task)) : [];
  const first = parts.reduce<(typeof parts)[number] | undefined>((a, p) => (a && a.from <= p.from ? a : p), undefined);
  const facts = {
    name: what,
    task: sum?.names[first?.task ?? tasks[0] ?? ''] ?? '',
    ...(first ? { by: dayOf(frame, first.from) } : {}),
  };
  const own = { ...base, id: `short:${id.replaceAll(/[^a-z0-9]+/gi, '-')}`, kind, limit: { max: 0 }, facts } as const;
  return telling('schedule', at)({ ...own, holdPoint: 'order' }, (rec) => {
    rec.step('lacks', 'wanted - comes', { wanted, comes }, wanted - comes, '', base.source);
    return wanted - comes;
  });
}

const dayOf = ({ start }: WorkFrame, minute: number): string =>
  new Date(Date.parse(`${start}T00:00:00Z`) + minute * 60_000).toISOString().slice(0, 10);

function unknownTicks({ unknown }: Sum): Found[] {
  if (unknown.length === 0) return [];
  const facts = { tasks: unknown.map((t) => ({ name: t.task })) };
  return [
    telling('schedule', unknown[0]?.path ?? 'work.done')({ ...ticks, facts }, (rec) => {
      rec.step('unknown', 'table', {}, unknown.length, '', 'project');
      return unknown.length;
    }),
  ];
}

const base = { holdPoint: 'decide', source: 'schedule.plan', consequence: 'money' } as const;
const within: DraftOf = { ...base, id: 'within', holdPoint: 'start', kind: 'time', limit: { min: 0 } };
const delivered: DraftOf = { ...base, id: 'delivery', kind: 'time', limit: { max: -1 } };
const ticks: DraftOf = { ...base, id: 'ticks', kind: 'count', limit: { max: 0 } };
