import { tradeTitle } from '@kneewall/engine';
import { type Block, body, bold, lead, list, page, part } from '../block.ts';
import type { SetInput } from '../setInput.ts';

/** Every caution of the plan in one place, each once: the page to hang up where the work is done. */
export function cautionPage({ plan }: SetInput): Block[] {
  return [
    page('Before anybody starts'),
    lead('Read this aloud with whoever helps. Stop when one of these is not so.'),
    body(
      bold(
        'Electricity, heights, heat, dust and heavy things kill. Where local law asks for a licensed person, that person does it.',
      ),
    ),
    ...cautionsOf(plan).map(({ title, cautions }) => ({
      stack: [part(title), list(cautions)],
      unbreakable: cautions.length < 20,
    })),
  ];
}

type Cautions = { readonly title: string; readonly cautions: readonly string[] };

/** Those that several trades say first, then each trade's own. One that another holds word for word is not said twice. */
function cautionsOf(plan: SetInput['plan']): Cautions[] {
  const said = [
    ...plan.tasks.flatMap(({ trade, cautions }) => cautions.map((caution) => ({ trade, caution }))),
    ...[...plan.findings, ...plan.readings].flatMap(({ trade, caution }) =>
      caution === undefined ? [] : [{ trade, caution }],
    ),
  ];
  const all = [...new Set(said.map((s) => s.caution))];
  const whole = all.filter((c) => !all.some((other) => other !== c && other.includes(c)));
  const tradesOf = (caution: string) => [...new Set(said.filter((s) => s.caution === caution).map((s) => s.trade))];
  const shared = whole.filter((c) => tradesOf(c).length > 1);
  const trades = [...new Set(said.map((s) => s.trade))];
  return [
    { title: 'All through the job', cautions: shared },
    ...trades.map((trade) => ({
      title: tradeTitle[trade],
      cautions: whole.filter((c) => !shared.includes(c) && tradesOf(c).includes(trade)),
    })),
  ].filter(({ cautions }) => cautions.length > 0);
}
