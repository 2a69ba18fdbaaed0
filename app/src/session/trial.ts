import { type Edit, inverse, type Project } from '@kneewall/project';
import type { Change } from './act.ts';
import { appliedAll, editsFor } from './changes.ts';

/** Changes that are only looked at: the project with them, the edits that lead there, and those that lead back. */
export type Trial = { readonly project?: Project; readonly edits: readonly Edit[]; readonly back: readonly Edit[] };

export const noTrial: Trial = { edits: [], back: [] };

/** A trial of changes on a project; none where they change nothing or the document refuses them. */
export function trialOf(project: Project, changes: readonly Change[], device: string): Trial {
  const edits = editsFor(project, changes, device, 0);
  const { value, problems } = appliedAll(project, edits);
  if (edits.length === 0 || problems.length > 0) return noTrial;
  return { project: value, edits, back: edits.toReversed().map((edit) => inverse(edit, 0)) };
}
