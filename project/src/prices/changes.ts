import { inOrder } from '../document/resolve.ts';
import type { Project } from '../schema/project.ts';
import { type PricesRead, sameKey } from './read.ts';

export type PriceChange = { readonly path: readonly string[]; readonly after: unknown };

/**
 * What has to stand where for the prices read: a thing that has a price already gets the new one and keeps all else that
 * was said of it; others are added behind the last. Nothing is taken away.
 */
export function priceChanges(project: Project, { taken }: Pick<PricesRead, 'taken'>): PriceChange[] {
  const prices = project.work?.prices ?? {};
  const known = new Map(Object.entries(prices).map(([id, p]) => [sameKey(p.name, p.unit), id]));
  const ids = new Set(Object.keys(prices));
  const keyBehind = keysBehind(inOrder(prices).at(-1)?.[1].order ?? '');
  let added = 0;
  return taken.map(({ entry }): PriceChange => {
    const there = known.get(sameKey(entry.name, entry.unit));
    if (there !== undefined) return { path: ['work', 'prices', there], after: { ...prices[there], ...entry } };
    const id = freeId(ids, entry.name ?? '');
    ids.add(id);
    return { path: ['work', 'prices', id], after: { order: keyBehind(added++), ...entry } };
  });
}

function freeId(ids: ReadonlySet<string>, name: string): string {
  const plain = name
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .replaceAll(/^-+|-+$/g, '')
    .slice(0, 56);
  const base = plain === '' ? 'price' : plain;
  let id = base;
  for (let n = 2; ids.has(id); n++) id = `${base}-${n}`;
  return id;
}

/** Keys that sort behind a key, one after the other, and stay short however often prices are taken. */
function keysBehind(last: string): (n: number) => string {
  const own = /^p([0-9a-z]{4})$/.exec(last);
  const from = own?.[1] === undefined ? 0 : Number.parseInt(own[1], 36) + 1;
  const prefix = own || last < 'p' ? 'p' : `${last.slice(0, 40)}p`;
  return (n) => `${prefix}${(from + n).toString(36).padStart(4, '0')}`;
}
