import { wordsIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';
import { unknownWords } from '../plan/unknownWords.ts';
import { sayDates, unknownDates } from './dateWords.ts';
import { sayMoney } from './moneyWords.ts';
import { sayPaper } from './paperWords.ts';
import { sayWork } from './workWords.ts';

const say = { ...sayPaper, ...sayMoney, ...sayDates, hands: sayWork };

/** What a finding is about while nothing can be said of it. */
const about = (word: string, name: string): string =>
  ({
    'no-permit': 'No permit is entered: nobody has noted yet what the local office wants.',
    'no-warranty': 'No warranty is entered: what ends it is not known.',
    'no-insurance': 'No insurance is entered: whether it still pays after this work is not known.',
    'permit-granted': `Whether ${name} will be granted is not known yet.`,
    'inspection-granted': `Whether ${name} is passed is not known yet.`,
    'incentive-first': `Whether ${name} must be granted before the order is not known.`,
    'incentive-terms': `Whether the plan keeps the terms of ${name} is not known.`,
    'warranty-terms': `What ends ${name} is not known yet.`,
    'insurance-told': `Whether they must be told before work begins is not known: ${name}.`,
    deadline: `Whether ${name} fits the days of work is not known.`,
    comes: `When ${name} comes is not known.`,
    stands: `Whether ${name} still stands on the day you order is not known.`,
    evidence: 'No paper is entered yet.',
    quote: `What ${name} comes to with all that it leaves out is not known.`,
    'life-cost': 'Which unit costs least over its life is not known yet.',
    hands: 'Who may do this work is not known yet.',
  })[word] ?? 'Not known yet.';

const asking: Readonly<Record<string, string>> = {
  'no-permit':
    'Ask the local office which permits and inspections this work needs, and enter what they say: also that none is needed, with a name and a day.',
  'no-warranty': 'Ask the maker or seller for the terms in writing, and enter them under Paperwork.',
  'no-insurance': 'Ask your insurer, and enter the answer under Paperwork.',
  'permit-granted': 'Follow it up. Do not cut, join or connect anything that needs it until it is in hand.',
  'inspection-granted': 'Call the inspector in time, and cover nothing before it is passed.',
};

/** Words for a finding of this trade. */
export function words(j: Judged, print: Printer): Words {
  const word = j.id.split(':')[0] ?? j.id;
  if (j.status === 'unknown') return unknown(j, print, word);
  const own = say[word as keyof typeof say];
  if (!own) throw new Error(`assert: words for ${word}`);
  return own(j, print);
}

function unknown(j: Judged, print: Printer, word: string): Words {
  const name = wordsIn(j, 'name');
  if (j.facts?.wrong === 1)
    return {
      what: `The day by which ${name} is due is none of the calendar.`,
      why: 'A deadline that no calendar has is never kept.',
      mend: 'Enter it again: year, month, day.',
    };
  if (word === 'hands') return sayWork(j, print);
  const dates = unknownDates(j);
  if (dates) return dates;
  const plain = unknownWords(j, print, about(word, name));
  const ask = j.because === 'missing' ? asking[word] : undefined;
  return ask ? { ...plain, mend: ask } : plain;
}
