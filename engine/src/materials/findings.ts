import type { Range } from '@kneewall/project';
import { attempt, required, unresolved } from '../plan/outcome.ts';
import { type DraftOf, draftsOf, type Found, telling } from '../plan/telling.ts';
import type { Drafts, PlanView } from '../plan/trade.ts';
import { cuttingFindings } from './cutting/findings.ts';
import type { Delivery, MaterialsResult, ShoppingList } from './result.ts';
import { scopes } from './result.ts';
import type { TooLong } from './straight/result.ts';

const told = telling('materials', 'list');
const base = { kind: 'count', source: 'materials.list', consequence: 'money', holdPoint: 'order' } as const;

/** What all of it costs, what could not be used, what changed since an order, and what stands against each delivery. */
export function findings(result: MaterialsResult, view: PlanView): Drafts {
  const { list, own } = result;
  return draftsOf([
    ...cuttingFindings(result, view),
    cost(result),
    counted({ ...base, id: 'unused', limit: { max: 0 } }, result, (l) => l.unused.length),
    ...(list.ok ? list.value.tooLong.map(inOneLength) : []),
    ...(own.orders.some((o) => o.line !== undefined) ? [changed(result)] : []),
    ...own.deliveries.flatMap((d) => [
      ...(list.ok ? [against(result, d)] : []),
      orderedInTime(d),
      ...(own.doneBy === undefined ? [] : [inTime(d, own.doneBy)]),
    ]),
  ]);
}

function cost({ list }: MaterialsResult): Found {
  const counts: DraftOf['facts'] = list.ok
    ? { priced: list.value.cost.priced, unpriced: list.value.cost.unpriced }
    : undefined;
  return told({ ...base, id: 'cost', kind: 'money', limit: {}, ...(counts ? { facts: counts } : {}) }, (rec): Range => {
    const { cost } = required(list);
    if (cost.unpriced > 0) return unresolved('missing', 'work.prices');
    const parts = Object.fromEntries(scopes.map((s) => [s, cost.scopes[s].likely]));
    const likely = scopes.reduce((sum, s) => sum + cost.scopes[s].likely, 0);
    rec.step('cost', scopes.join(' + '), parts, likely, '', base.source);
    return { low: cost.low, likely, high: cost.high };
  });
}

const counted = (of: DraftOf, { list }: MaterialsResult, count: (l: ShoppingList) => number): Found =>
  told(of, (rec) => {
    const found = count(required(list));
    rec.step('number', 'table', {}, found, '', of.source);
    return found;
  });

function changed(result: MaterialsResult): Found {
  const at = (since: 'more' | 'less' | 'new'): number =>
    result.list.ok ? result.list.value.lines.filter((l) => l.since === since).length : 0;
  const gone = result.list.ok ? result.list.value.gone.length : 0;
  const facts = { more: at('more'), less: at('less'), new: at('new'), gone };
  return counted({ ...base, id: 'changed', limit: { max: 0 }, facts }, result, () => facts.more + facts.new);
}

/** Findings that fail or are unknown at the hold points up to the order. */
const against = (result: MaterialsResult, { id, name }: Delivery): Found =>
  counted({ ...base, id: `against:${id}`, limit: { max: 0 }, facts: { name } }, result, (l) =>
    l.beforeOrder.reduce((n, f) => n + (f.status === 'tight' ? 0 : 1), 0),
  );

/** m of a piece that is never joined, against the longest length sold. */
const inOneLength = ({ what, piece, length, most, path }: TooLong, i: number): Found =>
  told(
    {
      id: `one-length:${i}`,
      kind: 'length',
      source: 'materials.straight',
      consequence: 'harm',
      holdPoint: 'order',
      limit: { max: most },
      facts: { what, piece, path },
    },
    (rec) => {
      rec.step('piece', 'table', {}, length, 'm', 'materials.straight');
      return length;
    },
  );

const days = { ...base, source: 'materials.days', limit: { min: 0 } } as const;

/** Days from the last day to order until it arrives. */
const orderedInTime = ({ id, name, arrives, orderBy }: Delivery): Found => {
  const by = attempt(() => dayText(required(orderBy)));
  return told({ ...days, id: `order-by:${id}`, facts: { name, ...(by.ok ? { by: by.value } : {}) } }, (rec) => {
    const [comes, orders] = [required(arrives), required(orderBy)];
    rec.step('days', 'arrives - orders', { arrives: comes, orders }, comes - orders, '', days.source);
    return comes - orders;
  });
};

/** Days left for the work when it arrives. */
const inTime = ({ id, name, arrives }: Delivery, doneBy: number): Found =>
  told({ ...days, id: `delivery:${id}`, facts: { name, doneBy: dayText(doneBy) } }, (rec) => {
    const comes = required(arrives);
    rec.step('days', 'doneBy - arrives', { doneBy, arrives: comes }, doneBy - comes, '', days.source);
    return doneBy - comes;
  });

const dayText = (day: number): string => new Date(day * 864e5).toISOString().slice(0, 10);
