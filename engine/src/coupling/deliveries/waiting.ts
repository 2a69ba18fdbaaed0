import { goodOf } from '../../materials/goods/goodOf.ts';
import { comesWith, namesOf } from '../../materials/list/comesWith.ts';
import { holdPointWords } from '../../plan/finding.ts';
import type { MaterialLine, Task } from '../../plan/lines.ts';
import type { WorkDelivery, WorkFrame } from '../../schedule/result.ts';

/** What a task waits for, by its id; without `at` nobody knows when it comes. */
export type Waiting = {
  readonly task: string;
  readonly on: 'delivery' | 'paper';
  readonly id: string;
  readonly at?: number;
};

/**
 * Which task waits for which deliveries: what a trade buys and that is not here yet comes with the deliveries that name it, else with
 * the first from its kind of shop; the trade's tasks from the hold point on by which it must be there wait for all of them. One without
 * a day comes after all others.
 */
export function waitingFor(
  tasks: readonly Task[],
  lines: readonly MaterialLine[],
  { deliveries, here }: Pick<WorkFrame, 'deliveries' | 'here'>,
): Waiting[] {
  if (deliveries.length === 0) return [];
  const inTurn = [...deliveries].sort((a, b) => comes(a) - comes(b) || (a.id < b.id ? -1 : 1));
  const arrived = new Set(here);
  const coming = lines.flatMap((line) => {
    const { shop, by } = goodOf(line);
    const id = line.like ? `${line.trade}/${line.like.id}` : line.id;
    const isHere = arrived.has(id) || (line.for !== undefined && arrived.has(line.for));
    if (isHere || !(line.amount > 0)) return [];
    return [{ trade: line.trade, by: rank(by), with: comesWith(namesOf(line), shop, inTurn) }];
  });
  return tasks.flatMap((t): Waiting[] => {
    const own = coming.filter((c) => c.trade === t.trade && (receives(t) || c.by <= rank(t.holdPoint)));
    const all = new Set(own.flatMap((c) => c.with));
    return inTurn
      .filter((d) => all.has(d))
      .map((d): Waiting => ({ task: t.id, on: 'delivery', id: d.id, ...(d.at === undefined ? {} : { at: d.at }) }));
  });
}

// Not infinity: two without a day would have no order.
const comes = ({ at }: WorkDelivery): number => at ?? Number.MAX_VALUE;
const rank = (point: Task['holdPoint']): number => holdPointWords.indexOf(point);
/** Unpacking is no use before there is something to unpack, whatever it has to be there for. */
const receives = (t: Task): boolean => t.id === 'equipment/receive';
