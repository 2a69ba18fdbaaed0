import type * as z from 'zod/mini';
import type { FieldMeta } from '../schema/field.ts';
import { metaOf } from '../schema/field.ts';
import { projectSchema } from '../schema/project.ts';

/** One place in the schema: what it says of itself and what lies below it. */
export type SchemaNode = {
  readonly meta: FieldMeta;
  readonly schema: z.ZodMiniType;
  /** Named fields of a group, or of one entry of a map. */
  readonly children: Readonly<Record<string, SchemaNode>>;
};

type Inner = { def: { innerType?: z.ZodMiniType; valueType?: z.ZodMiniType; shape?: Record<string, z.ZodMiniType> } };

const unwrap = (schema: z.ZodMiniType): z.ZodMiniType => {
  const inner = (schema as unknown as Inner).def.innerType;
  return inner ? unwrap(inner) : schema;
};

function shapeOf(schema: z.ZodMiniType): Record<string, z.ZodMiniType> {
  const def = (unwrap(schema) as unknown as Inner).def;
  return def.shape ?? (def.valueType ? shapeOf(def.valueType) : {});
}

function nodeOf(schema: z.ZodMiniType, meta: FieldMeta): SchemaNode {
  const children: Record<string, SchemaNode> = {};
  const open = meta.node === 'group' || meta.node === 'map';
  for (const [key, child] of Object.entries(open ? shapeOf(schema) : {})) {
    const below = metaOf(child);
    if (below) children[key] = nodeOf(child, below);
  }
  return { meta, schema, children };
}

/** The whole schema as a tree that can be walked beside a document. */
export const rootNode: SchemaNode = nodeOf(projectSchema, { node: 'group', label: 'Project' });

/** The schema of one entry of a map, without the map round it. */
export function entrySchema(node: SchemaNode): z.ZodMiniType {
  const record = unwrap(node.schema) as unknown as Inner;
  return record.def.valueType ?? node.schema;
}

/**
 * The node at a document path, where ids stand for entries of maps; `entry` when the path ends on one.
 * Undefined when the schema has nothing there.
 */
export function nodeAt(path: readonly (string | number)[]): { node: SchemaNode; entry: boolean } | undefined {
  let node = rootNode;
  let entry = false;
  for (const key of path) {
    if (node.meta.node === 'map' && !entry) {
      entry = true;
      continue;
    }
    const next = node.children[String(key)];
    if (!next) return undefined;
    node = next;
    entry = false;
  }
  return { node, entry };
}

/** Every field path of the schema, maps shown as `*`: `house.rooms.*.height`. */
export function schemaPaths(node: SchemaNode = rootNode, at = ''): string[] {
  const below = Object.entries(node.children).flatMap(([key, child]) => {
    const step = node.meta.node === 'map' ? `${at}.*.${key}` : at === '' ? key : `${at}.${key}`;
    return [step, ...schemaPaths(child, step)];
  });
  return below;
}
