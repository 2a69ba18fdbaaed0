import type { Plan } from '@kneewall/engine';
import { type Block, lead, page, table } from '../block.ts';
import type { SetInput } from '../setInput.ts';

/** Where every limit and figure of this plan is taken from, and how well that is known. */
export function sourcePages({ plan }: SetInput): Block[] {
  const used = usedIn(plan);
  return [
    page('Sources'),
    lead('“From memory” and “common practice” say just that: check such a figure before you lean on it.'),
    table(
      [
        { head: 'Mark', width: 110 },
        { head: 'Source', width: '*' },
        { head: 'Standing', width: 80 },
      ],
      Object.entries(plan.sources)
        .filter(([id]) => used.has(id))
        .sort(([a], [b]) => (a < b ? -1 : 1))
        .map(([id, { title, edition, place, standing }]) => [
          id,
          [title, edition, place].filter((words) => words !== undefined).join(', '),
          standing,
        ]),
    ),
  ];
}

/** Marks that a finding or a step of a working leans on. */
const usedIn = (plan: Plan): ReadonlySet<string> =>
  new Set([
    ...plan.findings.map((f) => f.source),
    ...Object.values(plan.workings).flatMap((steps) => steps.map((step) => step.source)),
  ]);
