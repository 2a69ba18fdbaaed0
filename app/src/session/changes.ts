import {
  applyEdit,
  type Checked,
  canonicalJson,
  type Edit,
  type Project,
  projectText,
  valueAt,
} from '@kneewall/project';
import { baseOf, type Entry, recordOf } from '../store/records.ts';
import type { Act, Change } from './act.ts';

/** The log is short to replay while a whole copy is put down this often. */
const actsPerBase = 40;

/** Changes as edits of a project. What changes nothing makes no edit. */
export const editsFor = (project: Project, changes: readonly Change[], device: string, firstSeq: number): Edit[] =>
  changes
    .map(({ path, after }) => ({ path, before: valueAt(project, path), after }))
    .filter(({ before, after }) => canonicalJson(before) !== canonicalJson(after))
    .map((edit, i) => ({ device, seq: firstSeq + i, ...edit }));

/** All edits in order, or the project as it was with what was refused. */
export function appliedAll(project: Project, edits: readonly Edit[]): Checked<Project> {
  let next = project;
  for (const edit of edits) {
    const applied = applyEdit(next, edit);
    if (applied.problems.length > 0) return { value: project, problems: applied.problems };
    next = applied.value;
  }
  return { value: next, problems: [] };
}

/** What an act puts into the store. `firstBase` is the project before it, where nothing of it is stored yet. */
export function entryFor(id: string, act: Act, after: Project, firstBase: Project | undefined, now: number): Entry {
  const listed = { id, name: after.about?.name ?? 'Without a name', changed: now };
  const record = recordOf(id, act);
  if (firstBase) return { record, listed, base: baseOf(id, projectText(firstBase), 0) };
  if (act.number % actsPerBase !== 0) return { record, listed };
  return { record, listed, base: baseOf(id, projectText(after), act.number) };
}

/** A demo stays as it is; what gets changed is a copy of it that says so in its name. */
export const copyOf = (project: Project): Project => ({
  ...project,
  about: { ...project.about, name: `Copy of ${project.about?.name ?? 'the demo'}` },
});
