import type { Entered, Range } from '../schema/entered.ts';
import type { Project } from '../schema/project.ts';
import type { SchemaNode } from './nodes.ts';
import { rootNode } from './nodes.ts';
import type { Chosen, Given, Missing, ResolvedProject } from './resolved.ts';
import { roomsByOutline } from './roomOutlines.ts';

/** Lays the document over the schema. Pure; a valid document in, every default computed, floors by their outlines. */
export const resolveProject = (project: Project): ResolvedProject => resolver()(project);

/** Lays documents over the schema one after the other: what they have in common is laid out once and stays the same objects. */
export function resolver(): (project: Project) => ResolvedProject {
  const kept: Kept = { laid: new WeakMap(), absent: new Map() };
  const houses = new WeakMap<object, ResolvedProject['house']>();
  return (project) => {
    const resolved = resolveGroup(rootNode, project as Tree, '', kept) as unknown as ResolvedProject;
    let house = houses.get(resolved.house);
    if (!house) {
      house = { ...resolved.house, rooms: roomsByOutline(resolved.house.rooms) };
      houses.set(resolved.house, house);
    }
    return { ...resolved, house };
  };
}

type Tree = Readonly<Record<string, unknown>> | undefined;

/** Groups and maps laid out so far, by the part of the document they come from; and those that nobody entered, by path. */
type Kept = {
  readonly laid: WeakMap<object, { readonly path: string; readonly made: Tree }>;
  readonly absent: Map<string, Tree>;
};

/** The part as it was laid out for this path before, else laid out. */
function laidOut(value: Tree, path: string, { laid, absent }: Kept, layOut: () => Tree): Tree {
  if (typeof value !== 'object' || value === null) {
    const made = absent.get(path) ?? layOut();
    absent.set(path, made);
    return made;
  }
  const known = laid.get(value);
  if (known?.path === path) return known.made;
  const made = layOut();
  laid.set(value, { path, made });
  return made;
}

function resolveGroup(node: SchemaNode, value: Tree, path: string, kept: Kept): Tree {
  const resolved: Record<string, unknown> = {};
  for (const key in node.children)
    resolved[key] = resolveField(
      node.children[key] as SchemaNode,
      value?.[key],
      path === '' ? key : `${path}.${key}`,
      kept,
    );
  return resolved;
}

function resolveField(node: SchemaNode, value: unknown, path: string, kept: Kept): unknown {
  switch (node.meta.node) {
    case 'group':
      return laidOut(value as Tree, path, kept, () => resolveGroup(node, value as Tree, path, kept));
    case 'map':
      return laidOut(value as Tree, path, kept, () => resolveMap(node, (value as Tree) ?? {}, path, kept));
    case 'quantity':
      return given(node, value as Entered | undefined, path);
    case 'choice':
      return chosen(node, value as string | undefined, path);
    case 'flag':
      return value ?? false;
    default:
      return value;
  }
}

const resolveMap = (node: SchemaNode, entries: NonNullable<Tree>, path: string, kept: Kept): Tree =>
  Object.fromEntries(
    Object.entries(entries).map(([id, value]) => {
      const entry = value as Tree;
      const at = `${path}.${id}`;
      return [id, laidOut(entry, at, kept, () => ({ order: entry?.order, ...resolveGroup(node, entry, at, kept) }))];
    }),
  );

function given(node: SchemaNode, entered: Entered | undefined, path: string): Given | Missing {
  const kind = node.meta.kind;
  if (!kind) throw new Error(`assert: the quantity at ${path} has no kind`);
  const value = entered?.value ?? (node.meta.default as number | Range | undefined);
  if (value === undefined) return { path, missing: true };
  const known = entered?.known ?? 'assumed';
  return typeof value === 'number'
    ? { path, kind, known, low: value, likely: value, high: value }
    : { path, kind, known, low: value.low, likely: value.likely, high: value.high };
}

function chosen(node: SchemaNode, value: string | undefined, path: string): Chosen | Missing {
  if (value !== undefined) return { path, choice: value, known: 'entered' };
  const fallback = node.meta.default;
  return typeof fallback === 'string' ? { path, choice: fallback, known: 'assumed' } : { path, missing: true };
}

type Ordered = { readonly order?: string | undefined };

/** Entries in the order the person sees: by order key, then by id. */
export const inOrder = <T extends Ordered>(entries: Readonly<Record<string, T>>): (readonly [string, T])[] =>
  Object.entries(entries).sort((a, b) => compare(a[1].order ?? '', b[1].order ?? '') || compare(a[0], b[0]));

/** Entries in id order, the order in which sums are made, so that equal documents give equal bits. */
export const inIdOrder = <T>(entries: Readonly<Record<string, T>>): (readonly [string, T])[] =>
  Object.entries(entries).sort((a, b) => compare(a[0], b[0]));

const compare = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);
