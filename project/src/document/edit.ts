import type * as z from 'zod/mini';
import { idPattern } from '../schema/field.ts';
import type { Project } from '../schema/project.ts';
import { canonicalJson } from './canonical.ts';
import { issueProblems } from './issues.ts';
import { entrySchema, nodeAt } from './nodes.ts';
import type { Checked, Problem } from './problem.ts';
import { echo, refused } from './problem.ts';
import { valueAt } from './valueAt.ts';

/**
 * Every change to a project, from the first day: who made it, its running number there, where, what stood there
 * and what stands there now. `undefined` is absence, so `after: undefined` removes.
 */
export type Edit = {
  readonly device: string;
  readonly seq: number;
  readonly path: readonly string[];
  readonly before: unknown;
  readonly after: unknown;
};

/**
 * The project with one edit made. The old project is untouched and shares every part that did not change. A value
 * that the schema refuses, or a `before` that no longer stands, gives the old project back with the problem.
 */
export function applyEdit(project: Project, edit: Edit): Checked<Project> {
  const problem = problemWith(project, edit);
  if (problem.length > 0) return { value: project, problems: problem };
  return { value: put(project as Tree, edit.path, edit.after) as Project, problems: [] };
}

/** The edit that takes another back. */
export const inverse = (edit: Edit, seq: number): Edit => ({ ...edit, seq, before: edit.after, after: edit.before });

type Tree = Readonly<Record<string, unknown>>;

function problemWith(project: Project, edit: Edit): Problem[] {
  const place = edit.path.length > 0 ? placeOf(edit.path) : undefined;
  if (!place) return [refused('unknown-field', edit.path, 'There is no such field.')];
  const now = valueAt(project, edit.path);
  if (canonicalJson(now) !== canonicalJson(edit.before))
    return [
      refused('conflict', edit.path, 'It was changed elsewhere meanwhile. Look at both, then choose.', {
        found: echo(now),
      }),
    ];
  if (edit.after === undefined) return [];
  const parsed = place.safeParse(edit.after);
  if (parsed.success) return [];
  return issueProblems(parsed.error as z.core.$ZodError, edit.after, edit.path);
}

/** The schema that a value at this path must meet. */
function placeOf(path: readonly string[]): z.ZodMiniType | undefined {
  const last = path.at(-1);
  if (last === undefined || path.includes('__proto__')) return undefined;
  const found = nodeAt(path);
  if (!found) return undefined;
  if (found.entry) return idPattern.test(last) ? entrySchema(found.node) : undefined;
  return found.node.schema;
}

function put(tree: Tree, path: readonly string[], after: unknown): Tree {
  const [key, ...rest] = path;
  if (key === undefined) return tree;
  const below = rest.length === 0 ? after : put((tree[key] as Tree | undefined) ?? {}, rest, after);
  if (below !== undefined) return { ...tree, [key]: below };
  const { [key]: _removed, ...kept } = tree;
  return kept;
}
