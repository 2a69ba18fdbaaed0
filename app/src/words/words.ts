import type { Status } from '@kneewall/engine';
import type { TradeId } from '@kneewall/project';

/** The words of the trade, the same on every screen. */
export const statusWord: Readonly<Record<Status, string>> = {
  ok: 'ok',
  tight: 'tight',
  fails: 'fails',
  unknown: 'unknown',
};

/** The parts of the document whose form stands on a trade's page, and further fields of other parts it leans on. */
export const tradeParts: Readonly<Record<TradeId, readonly (readonly string[])[]>> = {
  climate: [['site']],
  loads: [['house']],
  equipment: [['candidates'], ['power']],
  air: [['routes', 'ducts']],
  condensate: [['routes', 'drain']],
  lineset: [['routes', 'lineset']],
  circuit: [['routes', 'wires'], ['power']],
  offgrid: [['power']],
  access: [
    ['routes', 'passages'],
    ['routes', 'access'],
  ],
  materials: [['work', 'deliveries'], ['work', 'prices'], ['work', 'stock'], ['items']],
  schedule: [
    ['work', 'crew'],
    ['work', 'windows'],
    ['work', 'dates'],
  ],
  commissioning: [['readings']],
};

/** What is entered and belongs to no single trade. */
export const recordParts: readonly (readonly string[])[] = [
  ['about'],
  ['items'],
  ['work'],
  ['paperwork'],
  ['readings'],
  ['photos'],
];

/** The trade on whose page a document path is entered. */
export function tradeOf(path: readonly string[]): TradeId | undefined {
  const ids = Object.keys(tradeParts) as TradeId[];
  return ids.find((id) => tradeParts[id].some((part) => part.every((key, i) => path[i] === key)));
}

/** What the page is called in the browser's tab. */
export const screenTitle = {
  home: 'Hold points',
  first: 'First answer',
  trades: 'Trades',
  project: 'Project and files',
  buy: 'What to buy',
  do: 'What to do',
  read: 'Readings',
} as const;
