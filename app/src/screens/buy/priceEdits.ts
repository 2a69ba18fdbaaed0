import type { ListLine } from '@kneewall/engine';
import { type Project, priceIn } from '@kneewall/project';

type Change = { readonly path: readonly string[]; readonly after: unknown };

/** What has to be written so that a line has a price as typed, for one of its packs; nothing where it is no price above 0. */
export function priceEdit(project: Project, line: ListLine, typed: string): Change | undefined {
  const read = priceIn(typed, '.');
  if (!('price' in read) || read.price <= 0) return undefined;
  const prices = project.work?.prices ?? {};
  const price = { value: read.price, known: 'estimated', as: typed.trim().slice(0, 80) };
  const own = Object.keys(prices).find((id) => prices[id]?.line === line.id);
  if (own !== undefined) return { path: ['work', 'prices', own, 'price'], after: price };
  const pack = line.kind === 'length' && line.piece > 0 ? { piece: { value: line.piece, known: 'estimated' } } : {};
  const entry = { name: line.what.slice(0, 200), line: line.id, price, ...pack };
  return { path: ['work', 'prices', freeId(prices, line.id)], after: entry };
}

/** What has to be written so that a price that is there is taken for a line. */
export const takeEdit = (id: string, line: ListLine): Change => ({
  path: ['work', 'prices', id, 'line'],
  after: line.id,
});

/** Prices that no line has taken by name, kind or word, by id: which of them is a line's, a person may say. */
export function freePrices(project: Project, lines: readonly ListLine[]): readonly (readonly [string, string])[] {
  const used = new Set(lines.flatMap((l) => l.price?.path ?? []));
  return Object.entries(project.work?.prices ?? {}).flatMap(([id, p]) =>
    used.has(`work.prices.${id}`) || p.duct !== undefined ? [] : [[id, p.name ?? id] as const],
  );
}

function freeId(prices: Readonly<Record<string, unknown>>, line: string): string {
  const base = `for-${line
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, '-')
    .slice(0, 50)
    .replaceAll(/-+$/g, '')}`;
  let id = base;
  for (let n = 2; prices[id] !== undefined; n++) id = `${base}-${n}`;
  return id;
}
