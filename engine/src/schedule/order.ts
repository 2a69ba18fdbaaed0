import { holdPointWords } from '../plan/finding.ts';
import type { Task } from '../plan/lines.ts';

/**
 * What each task comes after, by id: what it names as far as that is planned; where it names nothing, all tasks of
 * earlier hold points, except those that would then wait for themselves; and what gates its hold point.
 */
export function orderOf(tasks: readonly Task[]): ReadonlyMap<string, readonly string[]> {
  const ids = new Set(tasks.map((t) => t.id));
  const order = new Map<string, string[]>(tasks.map((t) => [t.id, t.after.filter((id) => ids.has(id))]));
  const rank = (t: Task) => holdPointWords.indexOf(t.holdPoint);
  for (const t of tasks) {
    if (t.after.length > 0) continue;
    for (const other of tasks)
      if (rank(other) < rank(t) && !comesAfter(order, other.id, t.id)) order.get(t.id)?.push(other.id);
  }
  for (const gate of tasks)
    for (const t of tasks)
      if (t.holdPoint === gate.gates && !order.get(t.id)?.includes(gate.id) && !comesAfter(order, gate.id, t.id))
        order.get(t.id)?.push(gate.id);
  return order;
}

/** Whether a task waits for another, at whatever remove. */
function comesAfter(order: ReadonlyMap<string, readonly string[]>, id: string, other: string): boolean {
  const seen = new Set<string>();
  const open = [id];
  for (let at = open.pop(); at !== undefined; at = open.pop()) {
    if (at === other) return true;
    if (seen.has(at)) continue;
    seen.add(at);
    open.push(...(order.get(at) ?? []));
  }
  return false;
}
