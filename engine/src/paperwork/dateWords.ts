import { wordsIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';

type Say = (j: Judged, print: Printer) => Words;
const late = (j: Judged, print: Printer): string => print.quantity(Math.abs(j.margin ?? 0), 'count');

/** When an answer comes, and how long a quote stands. */
export const sayDates: Readonly<Record<string, Say>> = {
  comes: (j, print) => ({
    what: `${wordsIn(j, 'name')}: an answer is due on ${wordsIn(j, 'comes')}, and needed by ${wordsIn(j, 'needed')}.`,
    why: 'What a permit covers waits for it in the plan: no hole is cut and nothing is joined before that day.',
    mend:
      j.status === 'ok'
        ? `Days in hand: ${print.value(j)}. Follow it up on the day.`
        : `Too late by ${late(j, print)} days: ask now whether it can come sooner, or move the work.`,
  }),
  stands: (j, print) => ({
    what:
      j.status === 'ok'
        ? `${wordsIn(j, 'name')} stands until ${wordsIn(j, 'due')}; you order by ${wordsIn(j, 'order')}.`
        : `${wordsIn(j, 'name')} ends before you order: it stands until ${wordsIn(j, 'due')}, and the order for the unit goes out by ${wordsIn(j, 'order')}.`,
    why: 'After its last day a quote binds nobody, and prices seldom fall.',
    mend:
      j.status === 'ok'
        ? `Days in hand: ${print.value(j)}.`
        : `Ask in writing for ${late(j, print)} more days, order sooner, or reckon with a new price.`,
  }),
};

/** Known is only how long it takes: the last day to ask. Else how long, or by when, is missing. */
export function unknownDates(j: Judged): Words | undefined {
  const name = wordsIn(j, 'name');
  if (j.id.startsWith('comes:') && j.because === 'missing')
    return {
      what:
        wordsIn(j, 'askBy') === ''
          ? `How long ${name} takes is not known: the plan counts on it being in hand in time.`
          : `To have ${name} by ${wordsIn(j, 'needed')}, ask by ${wordsIn(j, 'askBy')}: it takes ${wordsIn(j, 'waits')} days.`,
      why: 'Offices answer in their own time; work that needs their answer cannot begin before it.',
      mend:
        wordsIn(j, 'askBy') === '' ? 'Ask how many days it takes, and enter them.' : 'Enter the day on which you ask.',
    };
  return undefined;
}
