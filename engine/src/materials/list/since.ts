import type { ListLine, Order, Since } from '../result.ts';

type Line = Omit<ListLine, 'since'>;

/** How each line stands against what was ordered from the list. */
export function withSince(lines: readonly Line[], orders: readonly Order[]): ListLine[] {
  const ids = new Set(orders.flatMap((o) => o.line ?? []));
  const shops = new Set(lines.flatMap((l) => (ids.has(l.id) ? [l.shop] : [])));
  return lines.map((l) => ({ ...l, since: sinceOf(l, shops.has(l.shop)) }));
}

function sinceOf(l: Line, shopKnown: boolean): Since {
  if (l.ordered <= 0) return shopKnown && l.bought > 0 ? 'new' : 'open';
  if (l.open > 0) return 'more';
  const spare = l.ordered - l.bought;
  return l.piece > 0 ? (spare >= l.piece * (1 - 1e-9) ? 'less' : 'as-ordered') : spare > 1e-9 ? 'less' : 'as-ordered';
}

/** Ordered from the list and no longer on it. */
export function goneFrom(lines: readonly Line[], orders: readonly Order[]): Order[] {
  const ids = new Set(lines.map((l) => l.id));
  return orders.filter((o) => o.line !== undefined && !ids.has(o.line));
}
