import { holdPointWords } from '../../plan/finding.ts';
import type { MaterialLine, Task } from '../../plan/lines.ts';
import type { Shortage, WorkDelivery, WorkFrame } from '../../schedule/result.ts';
import { type Coming, goodsComing } from './goodsComing.ts';

/** What a task waits for, by its id; without `at` nobody knows when it comes. */
export type Waiting = {
  readonly task: string;
  readonly on: 'delivery' | 'paper';
  readonly id: string;
  readonly at?: number;
};

type Frame = Pick<WorkFrame, 'deliveries' | 'here' | 'stock'>;

/**
 * Which task waits for which deliveries: what a trade buys and that is not here yet comes with the deliveries that name it, else with
 * the first from its kind of shop; the trade's tasks from the hold point on by which it must be there wait for as many of them as
 * bring enough, or for all where not every one says how much. One without a day comes after all others.
 */
export function waitingFor(tasks: readonly Task[], lines: readonly MaterialLine[], frame: Frame): Waiting[] {
  if (frame.deliveries.length === 0) return [];
  const deliveries = inTurn(frame);
  const coming = goodsComing(lines, { ...frame, deliveries });
  return tasks.flatMap((t): Waiting[] => {
    const all = new Set(coming.filter((c) => needs(t, c)).flatMap((c) => c.with));
    return deliveries
      .filter((d) => all.has(d))
      .map((d): Waiting => ({ task: t.id, on: 'delivery', id: d.id, ...(d.at === undefined ? {} : { at: d.at }) }));
  });
}

/** Goods of which all deliveries together bring too little, by their own words, and the tasks that need them. */
export function shortages(tasks: readonly Task[], lines: readonly MaterialLine[], frame: Frame): Shortage[] {
  const coming = goodsComing(lines, { ...frame, deliveries: inTurn(frame) });
  const short = new Map<string, Shortage>();
  for (const own of coming) {
    const { counted } = own;
    if (!counted || counted.comes >= counted.wanted * (1 - 1e-9)) continue;
    const had = short.get(counted.id)?.tasks ?? [];
    const needing = tasks.filter((t) => needs(t, own) && !had.includes(t.id)).map((t) => t.id);
    const [first] = own.with;
    short.set(counted.id, {
      ...counted,
      tasks: [...had, ...needing],
      at: first ? `work.deliveries.${first.id}.amounts` : 'work.deliveries',
    });
  }
  return [...short.values()];
}

const inTurn = ({ deliveries }: Frame): WorkDelivery[] =>
  [...deliveries].sort((a, b) => comes(a) - comes(b) || (a.id < b.id ? -1 : 1));

const needs = (t: Task, c: Coming): boolean => c.trade === t.trade && (receives(t) || rank(c.by) <= rank(t.holdPoint));

// Not infinity: two without a day would have no order.
const comes = ({ at }: WorkDelivery): number => at ?? Number.MAX_VALUE;
const rank = (point: Task['holdPoint']): number => holdPointWords.indexOf(point);
/** Unpacking is no use before there is something to unpack, whatever it has to be there for. */
const receives = (t: Task): boolean => t.id === 'equipment/receive';
