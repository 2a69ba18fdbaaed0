import { goodOf } from '../../materials/goods/goodOf.ts';
import { holdPointWords } from '../../plan/finding.ts';
import type { MaterialLine, Task } from '../../plan/lines.ts';
import type { WorkFrame } from '../../schedule/result.ts';

/** The delivery a task waits for. */
export type Waiting = { readonly task: string; readonly delivery: string; readonly at: number };

/**
 * Which task waits for which delivery: what a trade buys from a kind of shop, and that is not here yet, comes with the first delivery
 * from there; the trade's tasks from the hold point on by which it must be there wait for it. Of several, the last.
 */
export function waitingFor(
  tasks: readonly Task[],
  lines: readonly MaterialLine[],
  { deliveries, here }: Pick<WorkFrame, 'deliveries' | 'here'>,
): Waiting[] {
  if (deliveries.length === 0) return [];
  const first = [...deliveries].sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1));
  const arrived = new Set(here);
  const comes = lines.flatMap((line) => {
    const { shop, by } = goodOf(line);
    const id = line.like ? `${line.trade}/${line.like.id}` : line.id;
    const isHere = arrived.has(id) || (line.for !== undefined && arrived.has(line.for));
    const delivery = first.find((d) => d.brings === 'all' || d.brings === shop);
    return isHere || !(line.amount > 0) || !delivery ? [] : [{ trade: line.trade, by: rank(by), delivery }];
  });
  return tasks.flatMap((t): Waiting[] => {
    const own = comes.filter((c) => c.trade === t.trade && (receives(t) || c.by <= rank(t.holdPoint)));
    const last = own.reduce<(typeof own)[number] | undefined>(
      (a, c) => (a && a.delivery.at >= c.delivery.at ? a : c),
      undefined,
    );
    return last ? [{ task: t.id, delivery: last.delivery.id, at: last.delivery.at }] : [];
  });
}

const rank = (point: Task['holdPoint']): number => holdPointWords.indexOf(point);
/** Unpacking is no use before there is something to unpack, whatever it has to be there for. */
const receives = (t: Task): boolean => t.id === 'equipment/receive';
