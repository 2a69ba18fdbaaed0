import type { Consequence, HoldPoint, Status } from '@kneewall/engine';
import type { Known, TradeId } from '@kneewall/project';

/** The words of the trade, the same on every screen. */
export const statusWord: Readonly<Record<Status, string>> = {
  ok: 'ok',
  tight: 'tight',
  fails: 'fails',
  unknown: 'unknown',
};

export const consequenceWord: Readonly<Record<Consequence, string>> = {
  harm: 'can hurt someone',
  damage: 'can damage something',
  money: 'costs money',
  comfort: 'costs comfort',
};

export const holdPoint: Readonly<Record<HoldPoint, { readonly title: string; readonly until: string }>> = {
  decide: { title: 'Decide', until: 'before you settle whether and where' },
  order: { title: 'Order', until: 'before anything is paid for' },
  lift: { title: 'Lift', until: 'before anyone carries or climbs' },
  cut: { title: 'Cut', until: 'before a hole or a duct is cut' },
  connect: { title: 'Connect', until: 'before pipe, drain and wire are joined' },
  close: { title: 'Close', until: 'before anything is covered' },
  start: { title: 'Start', until: 'before it runs for good' },
  season: { title: 'Season', until: 'every spring and autumn again' },
};

export const tradeTitle: Readonly<Record<TradeId, string>> = {
  climate: 'Climate',
  loads: 'Loads',
  equipment: 'Equipment',
  air: 'Air',
  condensate: 'Condensate',
  lineset: 'Line set',
  circuit: 'Circuit',
  offgrid: 'Own power',
  access: 'Access',
  materials: 'Materials',
  schedule: 'Schedule',
  commissioning: 'Commissioning',
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
  materials: [['items'], ['work', 'prices'], ['work', 'stock']],
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

export const knownWord: Readonly<Record<Known, string>> = {
  measured: 'measured',
  nameplate: 'nameplate or sheet',
  estimated: 'estimated',
  assumed: 'assumed',
};

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
