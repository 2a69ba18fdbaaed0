import { wordsIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import { namedSubject } from '../plan/namedSubject.ts';
import type { Printer } from '../plan/printer.ts';
import { unknownWords } from '../plan/unknownWords.ts';
import { unknownJoint } from './cutting/joint/messages.ts';
import { aboutCutting, sayCutting } from './cutting/messages.ts';
import type { Say } from './cutting/say.ts';

const things = (n: string): string => (n === '1' ? '1 thing' : `${n} things`);

const say: Readonly<Record<string, Say>> = {
  ...sayCutting,
  cost: (j, print) => ({
    what: `All that must be bought costs ${print.value(j)} at the prices you entered, in whole pieces.`,
    why: 'Money that is not planned for is missing when the house stands open.',
    mend: 'Ask for firm prices before you order, with freight.',
  }),
  unused: (j, print) => ({
    what:
      j.status === 'ok'
        ? 'Every price, stock and order you entered could be used.'
        : `Prices, stock or orders that could not be used: ${print.value(j)}. The shopping list names each and why.`,
    why: 'What cannot be read is neither taken off the list nor added to its cost.',
    mend: j.status === 'ok' ? 'Nothing to do.' : 'Give each an amount with its unit, and say which line it is for.',
  }),
  'one-length': (j, print) => ({
    what: `“${wordsIn(j, 'piece')}” is ${print.value(j)} long; the longest length sold of “${wordsIn(j, 'what')}” is ${print.limit(j)}, and a piece that carries is never joined.`,
    why: 'A joint in a plank or a timber that carries people or the unit lets go under them.',
    mend: 'Make it shorter with another bearing under it, or have an engineer name a stronger member that comes so long.',
  }),
  changed: (j) => ({
    what:
      j.status === 'ok'
        ? 'What was ordered still covers the plan.'
        : `What was ordered does not cover the plan: more is needed of ${things(wordsIn(j, 'more'))}, not on the order ${things(wordsIn(j, 'new'))}; less of ${things(wordsIn(j, 'less'))}, no longer needed ${things(wordsIn(j, 'gone'))}.`,
    why: 'A part that is missing on the day costs a delivery; one that is not needed can often go back only unopened.',
    mend:
      j.status === 'ok'
        ? 'Look again after every change of the plan.'
        : 'Go through the differences and order the rest in one go.',
  }),
  against: (j, print) => ({
    what:
      j.status === 'ok'
        ? `Nothing that counts before an order stands against ordering for “${wordsIn(j, 'name')}”.`
        : `Before you order for “${wordsIn(j, 'name')}”: ${print.value(j)} findings up to “Order” fail or are not known.`,
    why: 'What is ordered on a guess comes with the boat and goes back with it.',
    mend: j.status === 'ok' ? 'Order.' : 'Settle what stands under “Decide” and “Order” first.',
  }),
  'order-by': (j, print) => ({
    what:
      j.status === 'ok'
        ? `For “${wordsIn(j, 'name')}” order by ${wordsIn(j, 'by')}: ${print.value(j)} days before it arrives.`
        : `“${wordsIn(j, 'name')}” would arrive before the last day to order for it.`,
    why: 'An order that is a day late waits for the next boat.',
    mend: j.status === 'ok' ? 'Put that day into your calendar.' : 'Check both days of the delivery.',
  }),
  delivery: (j, print) => ({
    what:
      j.status === 'ok'
        ? `“${wordsIn(j, 'name')}” arrives ${print.value(j)} days before the last day of work, ${wordsIn(j, 'doneBy')}.`
        : `“${wordsIn(j, 'name')}” arrives after the last day of work, ${wordsIn(j, 'doneBy')}.`,
    why: 'Nothing can be built with what is not there yet.',
    mend:
      j.status === 'ok'
        ? 'Keep a day in hand for unpacking and checking.'
        : 'Take an earlier delivery, or later days for the work.',
  }),
};

const about: Readonly<Record<string, string>> = {
  ...aboutCutting,
  cost: 'What all of it costs',
  unused: 'Whether all prices, stock and orders can be used',
  'one-length': 'Whether a piece goes into one length',
  changed: 'What has changed since the order',
  against: 'What stands against the order',
  'order-by': 'By which day to order',
  delivery: 'Whether the delivery comes in time',
};

export function words(j: Judged, print: Printer): Words {
  const word = j.id.split(':')[0] ?? j.id;
  const topic = about[word];
  if (j.status === 'unknown') {
    if (word === 'joint') {
      const { what, why } = unknownJoint(j);
      return unknownWords(j, print, what, why);
    }
    const unpriced = word === 'cost' ? wordsIn(j, 'unpriced') : '';
    const lacks =
      unpriced === '' ? '' : `: ${things(unpriced)} of the list ${unpriced === '1' ? 'has' : 'have'} no price`;
    return unknownWords(j, print, `${namedSubject(j, topic ?? 'The shopping list')} is not known yet${lacks}.`);
  }
  const own = say[word];
  if (!own) throw new Error(`assert: words for ${word}`);
  return own(j, print);
}
