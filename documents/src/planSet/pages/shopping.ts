import {
  amountWords,
  forgottenWords,
  holdPointTitle,
  type ListLine,
  piecesWords,
  type ShoppingList,
  scopeTitle,
  shopTitle,
} from '@kneewall/engine';
import type { System } from '@kneewall/project';
import { formatRange } from '@kneewall/project/quantity';
import { type Block, body, columnsOf, lead, page, part, table } from '../block.ts';
import type { SetInput } from '../setInput.ts';

/** What to buy, by shop and in the order in which it must be there, with a box to tick; then cost, tools, and what is forgotten. */
export function shoppingPages({ plan, units }: SetInput): Block[] {
  const found = plan.trades.materials?.list;
  if (!found?.ok) return [page('What to buy'), body('Nothing to buy follows from the plan yet.')];
  const { lines, tools, forgotten } = found.value;
  const wanted = lines.filter((l) => l.bought > 0);
  const shops = [...new Set(wanted.map((l) => l.shop))];
  return [
    page('What to buy'),
    lead('Whole packs, with waste allowed and what is at hand taken off. Settle “Order” before anything is paid for.'),
    ...shops.map((shop) =>
      shopTable(
        shopTitle[shop],
        wanted.filter((l) => l.shop === shop),
        units,
      ),
    ),
    ...costs(found.value, units),
    ...(tools.length === 0
      ? []
      : [
          {
            stack: [
              part('Tools'),
              columnsOf(
                tools.map((t) => `${t.what}${t.atHand ? ' (at hand)' : ''}`),
                3,
              ),
            ],
            unbreakable: true,
          },
        ]),
    ...(forgotten.length === 0
      ? []
      : [
          {
            stack: [
              part('Easily forgotten'),
              columnsOf(
                forgotten
                  .filter((f) => !f.atHand)
                  .map((f) => `${forgottenWords[f.id]?.what ?? f.id}. ${forgottenWords[f.id]?.why ?? ''}`),
                2,
              ),
            ],
            unbreakable: true,
          },
        ]),
  ];
}

const shopTable = (title: string, lines: readonly ListLine[], units: System): Block =>
  table(
    [
      { head: '', width: 10 },
      { head: 'What', width: '*' },
      { head: 'Buy', width: 84, right: true },
      { head: 'Need', width: 62, right: true },
      { head: 'Before', width: 44 },
      { head: 'Costs about', width: 62, right: true },
    ],
    lines.map((l) => [
      '☐',
      l.what,
      piecesWords(l, l.pieces, l.bought, units),
      amountWords(l.need, l.kind, units),
      holdPointTitle[l.by].title,
      l.cost ? formatRange(l.cost, 'money', units) : '',
    ]),
    { title },
  );

function costs({ cost }: ShoppingList, units: System): Block[] {
  const rows = Object.entries(cost.scopes).filter(([, c]) => c.priced + c.unpriced > 0);
  if (cost.priced === 0) return [body(`No price is entered for any of the ${cost.unpriced} things.`)];
  return [
    table(
      [
        { head: 'Part of the job', width: '*' },
        { head: 'Costs about', width: 90, right: true },
        { head: 'Without a price', width: 80, right: true },
      ],
      [
        ...rows.map(([scope, c]) => [
          scopeTitle[scope as keyof typeof scopeTitle],
          c.priced > 0 ? formatRange(c, 'money', units) : '',
          c.unpriced === 0 ? '' : String(c.unpriced),
        ]),
        ['All that has a price', formatRange(cost, 'money', units), cost.unpriced === 0 ? '' : String(cost.unpriced)],
      ],
      { title: 'What it costs, at the prices entered' },
    ),
  ];
}
