import type { Entered } from '../schema/entered.ts';
import type { Project } from '../schema/project.ts';
import { asked, type Problem } from './problem.ts';

const likely = (x: Entered | undefined): number | undefined =>
  x === undefined ? undefined : typeof x.value === 'number' ? x.value : x.value.likely;
const parts = ['unit', 'ducts', 'electrical', 'removal', 'permit', 'condensate', 'lineset', 'startUp'] as const;

/** Quotes that nobody can compare: for nothing, or for nothing that is marked. Kept, and the person asked. */
export function paperProblems({ paperwork = {} }: Project): Problem[] {
  return Object.entries(paperwork).flatMap(([id, paper]) => {
    if (paper.kind !== 'quote') return [];
    const amount = likely(paper.amount);
    const free =
      amount === 0
        ? [
            asked(
              'implausible',
              ['paperwork', id, 'amount'],
              'Nobody works for nothing: enter what the quote asks for all.',
              {
                found: 0,
              },
            ),
          ]
        : [];
    const bare =
      amount !== undefined && !parts.some((part) => paper.quote?.[part])
        ? [
            asked(
              'incomplete',
              ['paperwork', id, 'quote'],
              'Mark what is written in the quote; it is not compared until then.',
            ),
          ]
        : [];
    return [...free, ...bare];
  });
}

/** Whether the calendar has such a day: 2027-02-31 looks like one and is none. */
export function isDay(text: string): boolean {
  const at = Date.parse(`${text}T00:00:00Z`);
  return Number.isFinite(at) && new Date(at).toISOString().slice(0, 10) === text;
}
