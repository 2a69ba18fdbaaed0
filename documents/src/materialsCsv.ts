import { amountWords, holdPointTitle, type ListLine, type Plan, piecesWords, shopTitle } from '@kneewall/engine';
import type { System } from '@kneewall/project';

/** Characters with which a spreadsheet would start a formula, with their full-width twins. */
const formulaStart = /^\s*[=+\-@\t\r＝＋－＠]/;

/** One text cell: guarded against formulas, quoted where it has to be. Numbers are written by type and never come here. */
export function csvCell(text: string): string {
  const safe = formulaStart.test(text) ? `'${text}` : text;
  return /[",\n\r]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** The lines of the one shopping list, in the order in which things must be there; none while it is not known. */
export function shoppingLines(plan: Plan): readonly ListLine[] {
  const list = plan.trades.materials?.list;
  return list?.ok ? list.value.lines : [];
}

type Column = { readonly head: string; readonly of: (l: ListLine, units: System) => string };
const text = (head: string, of: (l: ListLine, units: System) => string): Column => ({
  head,
  of: (l, units) => csvCell(of(l, units)),
});
const number = (head: string, of: (l: ListLine) => number | undefined): Column => ({
  head,
  of: (l) => {
    const value = of(l);
    return value === undefined ? '' : String(value);
  },
});

const columns: readonly Column[] = [
  text('What', (l) => l.what),
  text('Buy', (l, units) => piecesWords(l, l.pieces, l.bought, units)),
  text('Still to order', (l, units) => piecesWords(l, l.openPieces, l.open, units)),
  text('Need', (l, units) => amountWords(l.need, l.kind, units)),
  text('At', (l) => shopTitle[l.shop]),
  text('Needed before', (l) => holdPointTitle[l.by].title),
  text('Kind', (l) => l.kind),
  number('Needed', (l) => l.need),
  number('Waste', (l) => l.waste),
  number('At hand', (l) => l.atHand),
  number('Ordered', (l) => l.ordered),
  number('Pieces', (l) => l.pieces),
  number('In a piece', (l) => l.piece),
  number('Bought', (l) => l.bought),
  number('Left over', (l) => l.left),
  text('Price taken', (l) => l.price?.name ?? ''),
  number('Costs at least', (l) => l.cost?.low),
  number('Costs likely', (l) => l.cost?.likely),
  number('Costs at most', (l) => l.cost?.high),
  text('Trades', (l) => [...new Set(l.from.map((f) => f.trade))].join(' ')),
  text('Line', (l) => l.id),
];

/** The shopping list as a table: words in the person's units, numbers in the kind's own unit, money as it was entered. */
export function materialsCsv(plan: Plan, units: System): string {
  const rows = shoppingLines(plan).map((l) => columns.map((c) => c.of(l, units)).join(','));
  return `${[columns.map((c) => c.head).join(','), ...rows].join('\r\n')}\r\n`;
}

/** The whole list, with tools, what is forgotten and its cost, as one JSON value; nothing while it is not known. */
export function materialsJson(plan: Plan): string | undefined {
  const list = plan.trades.materials?.list;
  return list?.ok ? `${JSON.stringify(list.value, undefined, 2)}\n` : undefined;
}
