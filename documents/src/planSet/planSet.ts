import { canonicalJson, hashOf, type Project, type System } from '@kneewall/project';
import type { Sheet } from '../sheet/drawing.ts';
import { sheetsOf } from '../sheets.ts';
import type { Block } from './block.ts';
import { cautionPage } from './pages/cautions.ts';
import { cover } from './pages/cover.ts';
import { type PartId, partIds } from './partNames.ts';
import { pagesOf } from './parts.ts';
import type { SetInput } from './setInput.ts';

/** How large the letters are: `large` is for tired eyes and bad light, on more pages. */
export type Letters = 'plain' | 'large';

/** A plan set ready to be printed: its pages in order, and what stands at the foot of each. */
export type PlanSet = {
  readonly title: string;
  /** Stands at the foot of every page before the page's number: which plan this is, and what it rests on. */
  readonly foot: string;
  readonly units: System;
  readonly letters: Letters;
  readonly content: readonly Block[];
  /** The drawings that go onto the pages kept for them. */
  readonly sheets: readonly Sheet[];
};

/**
 * The pages of a plan, from the cover to the sources, or those of some `parts`. Nothing in it hangs on the day or the
 * machine: equal projects and results give equal sets. A drawing that the plan is not ready for is left out. Never throws
 * on a valid project.
 */
export function planSet(input: SetInput, letters: Letters = 'plain', parts: readonly PartId[] = partIds): PlanSet {
  const { plan, project, units } = input;
  const sheets: readonly Sheet[] = parts.includes('drawings') ? sheetsOf(plan, project, units) : [];
  const name = project.about?.name ?? 'The project';
  return {
    title: `${name}: plan set`,
    foot: [
      name,
      `plan ${planMark(project)}`,
      assumedWords(project),
      ...(project.about?.invented ? ['invented data'] : []),
    ].join('  ·  '),
    units,
    letters,
    sheets,
    content: [...cover(input), ...cautionPage(input), ...pagesOf(parts, input, sheets)],
  };
}

/** Eight letters that differ as soon as anything in the project does: which print belongs to which plan. */
export const planMark = (project: Project): string => hashOf(canonicalJson(project)).slice(0, 8);

function assumedWords(project: Project): string {
  const count = assumedIn(project);
  return count === 1 ? '1 number assumed' : `${count} numbers assumed`;
}

/** How many of the project's entries are marked as assumed. */
function assumedIn(value: unknown): number {
  if (value === null || typeof value !== 'object') return 0;
  const here = 'known' in value && value.known === 'assumed' ? 1 : 0;
  return Object.values(value).reduce((sum: number, below) => sum + assumedIn(below), here);
}
