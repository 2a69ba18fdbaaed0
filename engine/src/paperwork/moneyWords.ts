import { numberIn, wordsIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';
import type { QuoteScope } from './result.ts';
import { quoteScopeTitle } from './scopeWords.ts';

type Say = (j: Judged, print: Printer) => Words;
const money = (j: Judged, print: Printer, key: string): string => print.rounded(numberIn(j, key), 'money');
const between = (j: Judged, print: Printer, low: string, high: string): string =>
  `${money(j, print, low)} to ${money(j, print, high)}`;

const missing = (j: Judged): string =>
  wordsIn(j, 'missing')
    .split(' ')
    .flatMap((s) => quoteScopeTitle[s as QuoteScope] ?? [])
    .join(', ');

/** Quotes at one scope, and what the units cost over their lives. */
export const sayMoney: Readonly<Record<string, Say>> = {
  quote: (j, print) => ({
    what:
      wordsIn(j, 'missing') === ''
        ? `${wordsIn(j, 'name')} holds the whole job for ${money(j, print, 'amount')}.`
        : `${wordsIn(j, 'name')} leaves out ${missing(j)}: ${print.value(j)} of the whole job, which then comes to ${money(j, print, 'total')} (${between(j, print, 'low', 'high')}).`,
    why: 'The cheapest quote is often the one that leaves most out.',
    mend:
      j.status === 'ok'
        ? 'Compare quotes by the whole job, and who stands for it how long.'
        : 'Ask for these parts in writing, or compare it by the whole job.',
  }),
  'life-cost': (j, print) => {
    const span = `${Math.round(numberIn(j, 'years'))} years at ${print.quantity(numberIn(j, 'interest'), 'fraction')} interest`;
    const whole = `${wordsIn(j, 'own')} costs ${money(j, print, 'likely')} over ${span} (${between(j, print, 'low', 'high')}), of it ${money(j, print, 'price')} to buy.`;
    const unfit =
      wordsIn(j, 'unfit') === ''
        ? ''
        : ' None of the candidates fits as it stands, so that all are compared: see what stands against each under Equipment and Own power.';
    const left = wordsIn(j, 'left') === '' ? '' : ` Not compared, for want of a price or rows: ${wordsIn(j, 'left')}.`;
    return {
      what: `${whole} ${comparison(j, print)}${unfit}${left}`,
      why: 'The price is paid once, fuel and electricity every year; over its life the energy is often the larger part.',
      mend:
        j.status === 'ok'
          ? 'Choose by what else counts: noise, service, whether it starts and fits.'
          : `Look again at ${wordsIn(j, 'best')}, or note why this one is worth more.`,
    };
  },
};

/** Beside the cheapest: dearer for certain, cheapest, or not to be told apart. */
function comparison(j: Judged, print: Printer): string {
  const best = wordsIn(j, 'best');
  const others = wordsIn(j, 'alike');
  if (j.status !== 'ok')
    return `${best} costs less at every end of what is not known: by ${money(j, print, 'beyondLow')} to ${money(j, print, 'beyondHigh')}.`;
  if (numberIn(j, 'isBest') === 1)
    return others === ''
      ? 'Of the candidates it costs least.'
      : `It looks cheapest, yet cannot be told apart from: ${others}.`;
  return `${best} looks cheaper by ${money(j, print, 'beyond')}, yet the two cannot be told apart by what is known.`;
}
