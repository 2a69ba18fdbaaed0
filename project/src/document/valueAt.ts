/** What stands at a path of a tree of groups and lists; undefined where nothing does. */
export const valueAt = (tree: unknown, path: readonly (string | number)[]): unknown =>
  path.reduce<unknown>(
    (value, key) =>
      value !== null && typeof value === 'object'
        ? (value as Readonly<Record<string, unknown>>)[String(key)]
        : undefined,
    tree,
  );
