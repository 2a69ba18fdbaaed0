import { holdPointWords } from '../../plan/finding.ts';
import type { Task } from '../../plan/lines.ts';
import type { Stock, Tool } from '../result.ts';

/** Every tool that a task names, once, with the tasks and the first hold point that need it; soonest first. */
export function toolsOf(tasks: readonly Task[], stock: readonly Stock[]): Tool[] {
  const found = new Map<string, Tool>();
  for (const { id, holdPoint, tools = [] } of tasks)
    for (const what of tools) {
      const name = what.trim();
      const key = `tool/${name.toLowerCase().replaceAll(/[^a-z0-9]+/g, '-')}`;
      const had = found.get(key);
      const by = had && holdPointWords.indexOf(had.by) <= holdPointWords.indexOf(holdPoint) ? had.by : holdPoint;
      const atHand = stock.some((s) => s.line === key);
      found.set(key, { id: key, what: had?.what ?? name, tasks: [...(had?.tasks ?? []), id], by, atHand });
    }
  return [...found.values()].sort((a, b) => holdPointWords.indexOf(a.by) - holdPointWords.indexOf(b.by));
}
