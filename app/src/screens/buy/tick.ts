import type { ListLine } from '@kneewall/engine';
import type { Project } from '@kneewall/project';

/** How a line stands, as a person ticks it. */
export const ticks = {
  open: 'To buy',
  hand: 'At hand',
  ordered: 'Ordered',
  arrived: 'Arrived',
  fitted: 'Fitted',
} as const;
export type Tick = keyof typeof ticks;

type Change = { readonly path: readonly string[]; readonly after: unknown };
/** What is ticked: a line of the list, a tool, or what is easily forgotten; `amount` with its unit. */
export type Ticked = { readonly line: string; readonly name: string; readonly amount: string };

/** All of a line in its own unit, so that no rounding leaves a rest to buy. */
export function allOf(line: ListLine, tick: Tick): Ticked {
  const wanted = tick === 'hand' ? line.need + line.waste : line.bought > 0 ? line.bought : line.need + line.waste;
  const unit = { length: ' m', area: ' m²' }[line.kind as string] ?? '';
  return { line: line.id, name: line.what.slice(0, 200), amount: `${Math.ceil(wanted * 1e4 - 1e-6) / 1e4}${unit}` };
}

/** How a line stands in the document. */
export function tickOf({ items, work }: Project, line: string): Tick {
  const item = Object.values(items ?? {}).find((i) => i.line === line);
  if (item?.state === 'ordered' || item?.state === 'arrived' || item?.state === 'fitted') return item.state;
  return Object.values(work?.stock ?? {}).some((s) => s.line === line) ? 'hand' : 'open';
}

/** What has to be written so that a line stands as ticked: what was ticked of it before goes, in the same act. An order keeps its amount while it moves on. */
export function tickChanges({ items = {}, work }: Project, { line, name, amount }: Ticked, tick: Tick): Change[] {
  const stock = work?.stock ?? {};
  const [item] = Object.keys(items).filter((id) => items[id]?.line === line);
  const gone = (map: typeof items | typeof stock, path: readonly string[], but?: string): Change[] =>
    Object.keys(map).flatMap((id) =>
      map[id]?.line === line && id !== but ? [{ path: [...path, id], after: undefined }] : [],
    );
  if (tick === 'open') return [...gone(items, ['items']), ...gone(stock, ['work', 'stock'])];
  if (tick === 'hand') {
    const had = Object.keys(stock).find((id) => stock[id]?.line === line) ?? freeId(stock, line);
    return [
      ...gone(items, ['items']),
      ...gone(stock, ['work', 'stock'], had),
      { path: ['work', 'stock', had], after: { name, line, amount } },
    ];
  }
  const rest = [...gone(stock, ['work', 'stock']), ...gone(items, ['items'], item)];
  if (item !== undefined) return [...rest, { path: ['items', item, 'state'], after: tick }];
  return [...rest, { path: ['items', freeId(items, line)], after: { name, line, amount, state: tick } }];
}

/** What has to be written when all of these lines are ordered. */
export function orderChanges(project: Project, lines: readonly ListLine[]): Change[] {
  const taken: Record<string, unknown> = { ...project.items };
  return lines.flatMap((l) => {
    const id = freeId(taken, l.id);
    taken[id] = l;
    const { line, name, amount } = allOf(l, 'ordered');
    return [{ path: ['items', id], after: { name, line, amount, state: 'ordered' } }];
  });
}

/** What has to be written when the rest of a line is ordered too: the order then holds all that is bought. */
export function restChanges({ items = {} }: Project, { line, amount }: Ticked): Change[] {
  const id = Object.keys(items).find((key) => items[key]?.line === line);
  return id === undefined ? [] : [{ path: ['items', id, 'amount'], after: amount }];
}

function freeId(map: Readonly<Record<string, unknown>>, line: string): string {
  const base =
    line
      .toLowerCase()
      .replaceAll(/[^a-z0-9]+/g, '-')
      .replaceAll(/^-+|-+$/g, '')
      .slice(0, 56) || 'thing';
  let id = base;
  for (let n = 2; map[id] !== undefined; n++) id = `${base}-${n}`;
  return id;
}
