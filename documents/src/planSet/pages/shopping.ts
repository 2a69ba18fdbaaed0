import { tradeTitle } from '@kneewall/engine';
import { printQuantity } from '@kneewall/project';
import { formatRange } from '@kneewall/project/quantity';
import { type Block, body, lead, page, table } from '../block.ts';
import type { SetInput } from '../planSet.ts';

/** What to buy, by trade, with a box to tick. */
export function shoppingPages({ plan, units }: SetInput): Block[] {
  const lines = plan.materials.filter((m) => m.amount > 0);
  const trades = [...new Set(lines.map((m) => m.trade))];
  return [
    page('What to buy'),
    lead(
      'Amounts as the plan needs them, before rounding to what shops sell. Settle “Order” before anything is paid for.',
    ),
    ...(lines.length === 0 ? [body('Nothing to buy follows from the plan yet.')] : []),
    ...trades.map((trade) =>
      table(
        [
          { head: '', width: 10 },
          { head: 'What', width: '*' },
          { head: 'How much', width: 80, right: true },
          { head: 'Sold by', width: 60, right: true },
          { head: 'Costs about', width: 80, right: true },
        ],
        lines
          .filter((m) => m.trade === trade)
          .map((m) => [
            '☐',
            m.what,
            printQuantity(m.amount, m.kind, units),
            m.soldBy === undefined || m.kind === 'count' ? '' : printQuantity(m.soldBy, m.kind, units),
            m.cost ? formatRange(m.cost, 'money', units) : '',
          ]),
        { title: tradeTitle[trade] },
      ),
    ),
  ];
}
