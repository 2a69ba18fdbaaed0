import { inOrder, type Range } from '@kneewall/project';
import { attempt, type Outcome, unresolved } from '../plan/outcome.ts';
import { type Scenario, scenario } from '../plan/scenario.ts';
import type { TradeInput } from '../plan/trade.ts';
import { sheetsAtHand } from './cutting/atHand.ts';
import { cutting } from './cutting/cutting.ts';
import { boughtCaps } from './cutting/made/madeOf.ts';
import { goodsNamed } from './list/comesWith.ts';
import { panelSheet } from './panels/sheet.ts';
import type { Delivery, MaterialsResult, Order, Own, PriceEntry, Stock } from './result.ts';

type Project = TradeInput['project'];
type Work = Project['work'];
type Prices = Work['prices'][string];

const perDay = 86_400;
/** Days from 1970 to a calendar day. */
const dayNumber = (day: string): number => Date.parse(`${day}T00:00:00Z`) / (1000 * perDay);

/** What the person has, pays and ordered, and what comes when. The list waits for what the trades need. Pure. */
export function design({ project }: TradeInput): MaterialsResult {
  const s = scenario();
  const doneBy = lastDay(project.work);
  const own: Own = {
    stock: inOrder(project.work.stock).map(([id, x]): Stock => {
      const [duct, each] = [ductName(x, s), s.maybe(x.length)];
      return {
        path: `work.stock.${id}`,
        name: x.name ?? id,
        ...(x.amount === undefined ? {} : { amount: x.amount }),
        ...(x.line === undefined ? {} : { line: x.line }),
        ...(duct === undefined ? {} : { duct }),
        ...(each === undefined ? {} : { each }),
        ...('choice' in x.sheet ? { sheet: true } : {}),
      };
    }),
    prices: inOrder(project.work.prices).flatMap(([id, x]) => priceEntry(id, x, s)),
    orders: ordersOf(project),
    deliveries: inOrder(project.work.deliveries).map(([id, x]): Delivery => {
      const amounts = amountsOf(x, `work.deliveries.${id}.amounts`);
      const arrives = dayAt(x.day, `work.deliveries.${id}.day`);
      return {
        id,
        name: x.name ?? id,
        arrives,
        orderBy: orderBy(x, arrives, `work.deliveries.${id}`, s),
        at: s.of(x.at),
        goods: goodsNamed(x.goods),
        amounts,
        brings: s.choice(x.brings),
      };
    }),
    ...(doneBy === undefined ? {} : { doneBy }),
    costs: costsOf(project),
    caps: boughtCaps(project),
    panels: sheetsAtHand(project, 'panel', panelSheet),
    saw: s.of(project.routes.ducts.cutting.straight.saw),
  };
  return { own, list: { ok: false, because: 'pending', paths: ['candidates'] }, ...cutting(project), workings: {} };
}

function lastDay({ dates, windows }: Work): number | undefined {
  const days = [dates.doneBy, ...(dates.doneBy === undefined ? inOrder(windows).map(([, w]) => w.day) : [])];
  const known = days.flatMap((d) => (d === undefined || !Number.isFinite(dayNumber(d)) ? [] : [dayNumber(d)]));
  return known.length > 0 ? Math.max(...known) : undefined;
}

const dayAt = (day: string | undefined, path: string): Outcome<number> =>
  attempt(() => (day === undefined || !Number.isFinite(dayNumber(day)) ? unresolved('missing', path) : dayNumber(day)));

/** Entries with a thing and how much of it; those of which one is left empty say nothing yet. */
const amountsOf = ({ amounts }: Work['deliveries'][string], path: string): Delivery['amounts'] =>
  inOrder(amounts).flatMap(([id, { good, amount }]) =>
    good?.trim() && amount?.trim() ? [{ path: `${path}.${id}`, good: good.trim(), amount: amount.trim() }] : [],
  );

function orderBy(
  x: Work['deliveries'][string],
  arrives: Outcome<number>,
  path: string,
  s: Scenario,
): Delivery['orderBy'] {
  if (x.orderBy !== undefined) return dayAt(x.orderBy, `${path}.orderBy`);
  const lead = s.maybe(x.lead);
  if (lead === undefined) return { ok: false, because: 'missing', paths: [`${path}.orderBy`] };
  return arrives.ok ? { ok: true, value: Math.floor(arrives.value - lead / perDay) } : arrives;
}

/** The name the air trade gives such a duct; nothing where kind or size is not entered. */
function ductName(x: Pick<Prices, 'duct' | 'diameter' | 'width' | 'height'>, s: Scenario): string | undefined {
  if (!('choice' in x.duct)) return undefined;
  const mm = (at: 'diameter' | 'width' | 'height'): number => Math.round(1000 * (s.maybe(x[at]) ?? 0));
  if (mm('diameter') > 0) return `${x.duct.choice} ${mm('diameter')}`;
  return mm('width') > 0 && mm('height') > 0 ? `${x.duct.choice} ${mm('width')}x${mm('height')}` : undefined;
}

function priceEntry(id: string, x: Prices, s: Scenario): PriceEntry[] {
  if ('missing' in x.price) return [];
  const { low, likely, high } = x.price;
  const piece = s.maybe(x.piece);
  const duct = ductName(x, s);
  return [
    {
      path: `work.prices.${id}`,
      name: x.name ?? id,
      price: { low, likely, high },
      part: s.choice(x.part),
      ...(x.unit === undefined ? {} : { unit: x.unit }),
      ...(piece === undefined ? {} : { piece }),
      ...(x.line === undefined ? {} : { line: x.line }),
      ...(duct === undefined ? {} : { duct }),
      ...('choice' in x.shop ? { shop: x.shop.choice } : {}),
    },
  ];
}

function ordersOf({ items }: Project): Order[] {
  return inOrder(items).flatMap(([id, item]): Order[] => {
    const state = 'choice' in item.state ? item.state.choice : 'idea';
    if (state === 'idea' || state === 'chosen') return [];
    return [
      {
        path: `items.${id}`,
        name: item.name ?? id,
        state,
        ...(item.of === undefined ? {} : { of: item.of }),
        ...(item.line === undefined ? {} : { line: item.line }),
        ...(item.amount === undefined ? {} : { amount: item.amount }),
      },
    ];
  });
}

/** What entries cost by themselves: a unit by its own price, and whatever an item names with its cost. */
function costsOf({ candidates, items }: Project): Record<string, Range> {
  const costs: Record<string, Range> = {};
  for (const [id, { price }] of inOrder(candidates))
    if (!('missing' in price)) costs[`candidates.${id}`] = rangeOf(price);
  for (const [, { of, cost }] of inOrder(items))
    if (of !== undefined && !('missing' in cost)) costs[of] = rangeOf(cost);
  return costs;
}

const rangeOf = ({ low, likely, high }: Range): Range => ({ low, likely, high });
