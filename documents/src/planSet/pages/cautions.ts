import { tradeTitle } from '@kneewall/engine';
import { type Block, body, bold, lead, list, page, part } from '../block.ts';
import type { SetInput } from '../planSet.ts';

/** Every caution of the plan in one place, by trade, each once: the page to hang up where the work is done. */
export function cautionPage({ plan }: SetInput): Block[] {
  const byTrade = new Map<string, Set<string>>();
  const add = (trade: keyof typeof tradeTitle, caution: string | undefined) => {
    if (caution === undefined) return;
    const words = byTrade.get(tradeTitle[trade]) ?? new Set();
    byTrade.set(tradeTitle[trade], words.add(caution));
  };
  for (const task of plan.tasks) for (const caution of task.cautions) add(task.trade, caution);
  for (const finding of plan.findings) add(finding.trade, finding.caution);
  for (const reading of plan.readings) add(reading.trade, reading.caution);
  return [
    page('Before anybody starts'),
    lead('Read this page aloud with whoever helps. Stop when one of these is not so.'),
    body(
      bold(
        'Electricity, heights, heat, dust and heavy things kill. Where local law asks for a licensed person, that person does it.',
      ),
    ),
    ...[...byTrade].flatMap(([trade, words]) => [
      { stack: [part(trade), list([...words])], unbreakable: words.size < 20 },
    ]),
  ];
}
