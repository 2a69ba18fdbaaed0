import { required, unresolved } from '../plan/outcome.ts';
import { type DraftOf, type Found, telling } from '../plan/telling.ts';
import { dayNumber } from './papers.ts';
import type { Paper, PaperworkResult } from './result.ts';
import { comesOn } from './waits.ts';

const source = 'paperwork.dates';
const base = { kind: 'count', consequence: 'money', limit: { min: 0 }, source } as const;
const at = (p: Paper, field: string): string => `paperwork.${p.id}.${field}`;
const dayText = (day: number): string => new Date(day * 864e5).toISOString().slice(0, 10);

/** Whether what is asked for comes by the day it is needed, and whether quotes still stand on the day of the order. */
export const dateFindings = (result: PaperworkResult): Found[] =>
  result.papers.flatMap((p) => {
    if (p.kind === 'quote') return stands(p, result);
    const open = (p.kind === 'permit' || p.kind === 'inspection') && (p.status === 'open' || p.status === 'asked');
    return open && (p.asked !== undefined || p.waits !== undefined) ? [comesInTime(p, result)] : [];
  });

/** Days in hand between the answer and the day it is needed by: the one entered, else the first or, of an inspection, the last of work. */
function comesInTime(p: Paper, { days }: PaperworkResult): Found {
  const needed = p.due ?? (days.ok ? (p.kind === 'permit' ? days.value.first : days.value.last) : undefined);
  const by = needed === undefined ? undefined : dayNumber(needed);
  const comes = comesOn(p);
  const facts: DraftOf['facts'] = {
    ...{ name: p.name, asker: p.asker ?? '', needed: needed ?? '', waits: p.waits ?? 0 },
    ...(comes === undefined ? {} : { comes: dayText(comes) }),
    ...(p.waits === undefined || by === undefined ? {} : { askBy: dayText(by - p.waits) }),
  };
  const field = p.waits === undefined ? 'waits' : 'asked';
  return telling('paperwork', at(p, field))(
    { ...base, id: `comes:${p.id}`, holdPoint: p.kind === 'permit' ? 'order' : 'connect', facts },
    (rec) => {
      if (comes === undefined) return unresolved('missing', at(p, field));
      if (by === undefined) return unresolved('missing', at(p, 'due'));
      rec.step('days', 'needed - comes', { needed: by, comes }, by - comes, '', source);
      return by - comes;
    },
  );
}

/** Days that a quote still stands after the day of the order; nothing once the unit is ordered, or where it names no end. */
function stands(p: Paper, { orderDay, unit }: PaperworkResult): Found[] {
  if (unit !== 'open' || p.status === 'refused' || (p.due === undefined && !p.dueWrong)) return [];
  const facts = {
    ...{ name: p.name, due: p.due ?? '', wrong: p.dueWrong ? 1 : 0 },
    ...(orderDay.ok ? { order: orderDay.value } : {}),
  };
  return [
    telling('paperwork', at(p, 'due'))({ ...base, id: `stands:${p.id}`, holdPoint: 'order', facts }, (rec) => {
      const until = dayNumber(p.due ?? '');
      if (until === undefined) return unresolved('missing', at(p, 'due'));
      const order = dayNumber(required(orderDay)) ?? 0;
      rec.step('days', 'until - order', { until, order }, until - order, '', source);
      return until - order;
    }),
  ];
}
