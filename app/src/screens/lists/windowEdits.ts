import type { WorkAnswers } from '@kneewall/engine';
import { inOrder, type Project } from '@kneewall/project';
import { entryId, orderAfter } from '../../session/newIds.ts';

type Change = { readonly path: readonly string[]; readonly after: unknown };
const guess = (value: number) => ({ value, known: 'estimated' });

/** What has to be written so that a project has these windows, whose minutes count from the plan's first day. */
export function windowEdits(
  project: Project,
  start: string,
  windows: readonly WorkAnswers['toAdd'][number][],
): Change[] {
  const known = project.work?.windows ?? {};
  const taken: Record<string, unknown> = { ...known };
  let order = inOrder(known).at(-1)?.[1].order;
  return windows.map(({ from, to, people }) => {
    const id = entryId('Window', taken);
    order = orderAfter(order);
    taken[id] = true;
    const day = new Date(Date.parse(`${start}T00:00:00Z`) + from * 60_000).toISOString().slice(0, 10);
    const after = {
      ...{ order, day, people: guess(people) },
      ...{ from: guess(60 * (from % 1440)), duration: guess(60 * (to - from)) },
    };
    return { path: ['work', 'windows', id], after };
  });
}
