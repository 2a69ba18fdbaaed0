import type { ResolvedProject } from '@kneewall/project';
import { chosenUnit } from '../../../atUnit/chosenUnit.ts';
import { fittedItems } from '../sectionsOf.ts';

/** Whether the chosen unit hangs in the house already. */
export function unitIsFitted(project: Pick<ResolvedProject, 'candidates' | 'items'>): boolean {
  const chosen = chosenUnit(project);
  return chosen !== undefined && fittedItems(project).has(`candidates.${chosen.id}`);
}
