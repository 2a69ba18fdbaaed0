import { type Project, valueAt } from '@kneewall/project';

type Tree = Readonly<Record<string, unknown>>;

/** The parts of the document that a trade reads, in the order it names them: equal parts are the same objects. */
export const partsRead = (project: Project, reads: readonly string[]): unknown[] =>
  reads.map((path) => valueAt(project, path.split('.')));

/** The document with everything but the named parts taken out, so that a trade cannot read what it did not name. */
export function onlyParts(project: Project, reads: readonly string[]): Project {
  const kept: Record<string, unknown> = { schema: project.schema };
  for (const path of reads) {
    const keys = path.split('.');
    const part = valueAt(project, keys);
    if (part !== undefined) graft(kept, keys, part);
  }
  return kept as Project;
}

function graft(tree: Record<string, unknown>, keys: readonly string[], part: unknown): void {
  const [key, ...rest] = keys;
  if (key === undefined) return;
  if (rest.length === 0) tree[key] = part;
  else {
    const below: Record<string, unknown> = { ...(tree[key] as Tree | undefined) };
    tree[key] = below;
    graft(below, rest, part);
  }
}
