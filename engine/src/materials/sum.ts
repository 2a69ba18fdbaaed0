import { holdPointWords } from '../plan/finding.ts';
import type { MaterialLine } from '../plan/lines.ts';
import { attempt, unresolved } from '../plan/outcome.ts';
import type { Said } from '../plan/trade.ts';
import { laidOf } from './cutting/laid.ts';
import { withSheets } from './cutting/lines.ts';
import { capLines } from './cutting/made/lines.ts';
import { forgotten } from './goods/forgotten.ts';
import { toolsOf } from './goods/tools.ts';
import { usedUp } from './goods/usedUp.ts';
import { isCalled, namesOf, namesOnList } from './list/comesWith.ts';
import { costOf } from './list/costOf.ts';
import { listLine } from './list/listLine.ts';
import { asLaid, mergedLines } from './list/merged.ts';
import { goneFrom, withSince } from './list/since.ts';
import { amountIn } from './list/soldIn.ts';
import { onPanels } from './panels/onPanels.ts';
import type { ListLine, MaterialsResult, Own, ShoppingList, Unused } from './result.ts';
import { asCut } from './straight/asCut.ts';

/** The one list of all that the trades need, in whole pieces, priced and held against what is at hand and ordered. */
export function sum(result: MaterialsResult, said: Said): MaterialsResult {
  const materials = [...withSheets(said.materials, result.cut), ...capLines(result.own.caps)];
  // The job of the pieces is wanted since the design: named once is enough.
  return { ...result, list: attempt(() => listOf(result.own, { ...said, materials }, result.cut)), wanted: [] };
}

function listOf(own: Own, { tasks, materials, findings }: Said, cut: MaterialsResult['cut']): ShoppingList {
  const laid = laidOf(cut);
  const used = usedUp(materials);
  const all: readonly MaterialLine[] = [...materials, ...used];
  if (!all.some((l) => l.amount > 0)) return unresolved('missing', 'candidates');
  const sheets = onPanels(
    mergedLines(all).map((m) => asLaid(m, laid.get(m.id))),
    own,
  );
  const cutLines = asCut(sheets.lines, own);
  const made = cutLines.lines.map((m) => listLine(m, own));
  const plain = made.map((m) => m.line);
  const lines = withSince(plain, own.orders).sort(
    (a, b) => holdPointWords.indexOf(a.by) - holdPointWords.indexOf(b.by),
  );
  const toOrder = holdPointWords.indexOf('order');
  return {
    lines,
    straight: cutLines.straight,
    panels: sheets.panels,
    tooLong: cutLines.tooLong,
    usedUp: used,
    tools: toolsOf(tasks, own.stock),
    forgotten: forgotten(all, own.stock),
    cost: costOf(lines),
    gone: goneFrom(plain, own.orders),
    unused: oncePerPath([
      ...made.flatMap((m) => m.unused),
      ...(cut.ok ? cut.value.unsure : []).map(
        ({ id, name }): Unused => ({ path: `work.stock.${id}`, name, because: 'thickness' }),
      ),
      ...unplaced(
        own,
        plain.map((l) => l.id),
      ),
      ...unknownGoods(own.deliveries, lineNames(all, plain)),
      ...unreadAmounts(own.deliveries, all, plain),
    ]),
    beforeOrder: findings.flatMap(({ id, status, holdPoint, consequence }) =>
      holdPointWords.indexOf(holdPoint) <= toOrder && status !== 'ok' && consequence !== 'comfort'
        ? [{ id, status }]
        : [],
    ),
  };
}

/** Prices entered for a line that is not on the list. What is at hand or ordered for one is told elsewhere. */
const unplaced = ({ prices }: Own, ids: readonly string[]): Unused[] =>
  prices.flatMap(({ path, name, line }) =>
    line === undefined || ids.includes(line) ? [] : [{ path, name, because: 'line' }],
  );

const oncePerPath = (unused: readonly Unused[]): Unused[] => [
  ...new Map(unused.map((u) => [u.because === 'goods' ? `${u.path} ${u.name}` : u.path, u])).values(),
];

/** Every name that things have, with the trades and on the list. */
const lineNames = (all: readonly MaterialLine[], plain: readonly { readonly id: string; readonly what: string }[]) => [
  ...all.flatMap(namesOf),
  ...plain.flatMap((l) => [l.id, l.what]),
];

/** What a delivery is to bring and nothing on the list is called. */
const unknownGoods = (deliveries: Own['deliveries'], names: readonly string[]): Unused[] =>
  deliveries.flatMap(({ id, goods, amounts }) =>
    [...goods.map((name) => ({ path: `work.deliveries.${id}.goods`, name })), ...amounts.map(named)]
      .filter(({ name }) => !isCalled(name, names))
      .map((x): Unused => ({ ...x, because: 'goods' })),
  );

const named = ({ path, good }: Own['deliveries'][number]['amounts'][number]) => ({ path, name: good });

/** How much a delivery brings of a thing on the list, where that is not understood. */
const unreadAmounts = (
  deliveries: Own['deliveries'],
  all: readonly MaterialLine[],
  listed: readonly Omit<ListLine, 'since'>[],
): Unused[] =>
  deliveries.flatMap(({ amounts }) =>
    amounts.flatMap((a): Unused[] => {
      const kind =
        listed.find((l) => isCalled(a.good, namesOnList(l)))?.kind ??
        all.find((l) => isCalled(a.good, namesOf(l)))?.kind;
      const read = kind === undefined || amountIn(a.amount, kind, 1) !== undefined;
      return read ? [] : [{ ...named(a), because: 'amount' }];
    }),
  );
