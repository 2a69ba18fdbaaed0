import { numberIn, wordsIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';
import { unknownWords } from '../plan/unknownWords.ts';
import { missingWords } from './missingWords.ts';
import type { Unplaced, WindowToAdd } from './result.ts';

type Say = (j: Judged, print: Printer) => Words;

const because: Readonly<Record<Unplaced['because'], string>> = {
  'no-window': 'no window is long enough',
  'too-few': 'too few people',
  'does-not-fit': 'the windows are used up',
  waits: 'waits for one of these',
  circle: 'waits for itself, through others',
  delivery: 'what it needs comes after the last window',
  'no-day': 'what it needs comes with a delivery that has no day',
  paper: 'its permit or inspection comes after the last window',
};
const listed = (j: Judged): string[] =>
  ((j.facts?.tasks ?? []) as readonly { readonly name: string }[]).map((t) => `“${t.name}”`);
/** The first of them, and how many more there are. */
const some = (j: Judged): string => {
  const all = listed(j);
  const shown = all.length > 10 ? 9 : all.length;
  return all.slice(0, shown).join(', ') + (shown < all.length ? ` and ${all.length - shown} more` : '');
};
const late = (j: Judged, print: Printer): string => print.quantity(Math.abs(j.margin ?? 0), 'time');
const waiting = (j: Judged): string =>
  ((j.facts?.waits ?? []) as readonly (Unplaced & { readonly name: string })[])
    .slice(0, 6)
    .map((u) => `“${u.name}” (${because[u.because]})`)
    .join('; ');

type ToAdd = Pick<WindowToAdd, 'missing' | 'people'> & Readonly<Record<'name' | 'day' | 'from' | 'to', string>>;
/** The windows that would do, the soonest first. */
function wayOut(j: Judged): string {
  const told = (j.facts?.toAdd ?? []) as readonly ToAdd[];
  if (told.length === 0) return 'Enter more or longer windows, or ask for more hands.';
  const more = numberIn(j, 'adds') - told.length;
  const each = told.map(
    (w) =>
      `${w.day} from ${w.from} to ${w.to} with ${w.people} ${w.people === 1 ? 'person' : 'people'} for “${w.name}” (${missingWords[w.missing]})`,
  );
  return `These windows would hold it, the soonest beside yours: ${each.join('; ')}${more > 0 ? `; and ${more} more, on Do` : ''}.`;
}

const say: Readonly<Record<string, Say>> = {
  placed: (j, print) => ({
    what:
      j.status === 'ok'
        ? 'All work has a place in your windows.'
        : `Tasks without a place in your windows: ${print.value(j)}: ${waiting(j)}.`,
    why: 'A house half opened when the free days end is cold, wet and dangerous.',
    mend: j.status === 'ok' ? 'Plan again when a day falls through.' : wayOut(j),
  }),
  window: (j, print) => ({
    what: `“${wordsIn(j, 'task')}”: no window is long enough. It needs ${print.limit(j)} in one go until it is safe to leave; the longest window it could use has ${print.value(j)}.`,
    why: 'Work that is broken off between two safe stops leaves a hanging load, an open roof or live ends behind.',
    mend: 'Enter a longer window; in the attic a cool morning, or a cooler month.',
  }),
  'safe-stops': (j) => ({
    what:
      j.status === 'ok'
        ? `Every window ends at a safe stop: all ${String(j.facts?.parts ?? 0)} parts of the work lie wholly inside one.`
        : 'The plan puts work past the end of a window.',
    why: 'Nobody should have to choose between leaving an opening unguarded and working on too tired.',
    mend:
      j.status === 'ok'
        ? 'Begin no part that you cannot finish today.'
        : 'Report this with the project file: it is a mistake in the program.',
  }),
  attic: (j, print) => ({
    what:
      j.status === 'ok'
        ? 'Nobody is planned into the attic for longer than its heat allows, hour by hour.'
        : `Work in the attic goes ${print.value(j)} beyond what its heat allows.`,
    why: 'Heat kills in attics, and whoever is failing does not notice it.',
    mend: 'The plan takes a hot day of the month. On a hotter one do not go up; on every day: water, rest, somebody below.',
    caution:
      'Stop at dizziness, cramps or when sweating stops: that is an emergency. Ask a doctor first if you are ill or take medicine.',
  }),
  overruns: (j, print) => ({
    what:
      j.facts?.day === undefined
        ? 'No window is likely to be overrun.'
        : `The window likeliest to be overrun is that of ${String(j.facts.day)}, in ${print.value(j)} of a thousand lives of the plan: ${listed(j).join(', ')}.`,
    why: 'Lengths are guesses, so each part is planned with the time that four of five cases stay within; a window that still falls short is one in which somebody works on too tired.',
    mend:
      j.status === 'ok'
        ? 'At the end of the window stop at the last safe stop, not at the last minute.'
        : 'Give that day more time, begin it first thing, or put one of its tasks off.',
  }),
  delivery: (j, print) => ({
    what: `“${wordsIn(j, 'name')}” comes ${print.value(j)} after ${j.facts?.entered === 0 ? 'the last of your windows' : 'the day on which all should be done'}. Waiting for it: ${some(j)}.`,
    why: 'What has to be built in cannot come after the work is over.',
    mend: 'Order it with an earlier delivery, correct its day, or move the day you want to be done by.',
  }),
  short: (j, print) => ({
    what: `“${wordsIn(j, 'name')}”: deliveries bring ${print.value(j)} less than “${wordsIn(j, 'task')}” needs${j.facts?.by === undefined ? '' : ` by ${String(j.facts.by)}`}, waste counted and what is at hand taken off.`,
    why: 'A task that stops half done for a tub or a length leaves the house open until the next boat.',
    mend: 'Add the rest to a delivery that comes before that day, enter what is at hand, or correct the amounts.',
  }),
  within: (j, print) => ({
    what:
      j.facts?.done === 1
        ? `“${wordsIn(j, 'task')}”: done${j.status === 'ok' ? ' in time' : ` ${late(j, print)} too late`}. The last day was ${wordsIn(j, 'by')}.`
        : `“${wordsIn(j, 'task')}”: by ${wordsIn(j, 'by')}, ${wordsIn(j, 'days')} days from ${wordsIn(j, 'from')}${j.status === 'ok' ? '' : `, ${late(j, print)} ago`}.`,
    why: 'A form sent a day late is how most warranties are lost.',
    mend:
      j.status === 'ok'
        ? 'It takes no window: do it the same evening, and tick it off.'
        : 'Send it today all the same, with the report of the first start, and ask in writing that it counts.',
  }),
  ticks: (j, print) => ({
    what: `Ticked off, but no task of the plan: ${print.value(j)} (${listed(j).join(', ')}).`,
    why: 'The plan changed since. What you ticked is kept, and counts for nothing until a task has that name again.',
    mend: 'Look whether the work is still needed under another name, tick that, or take the tick out.',
  }),
  crew: (j, print) => ({
    what: `People at hand: ${print.value(j)}; the task that needs most takes ${print.limit(j)}.`,
    why: 'Lifting and working in an attic alone is how people get hurt.',
    mend:
      j.status === 'ok' ? 'See that they know which day.' : 'Find a helper for that day and enter them under the crew.',
  }),
  'done-by': (j, print) => ({
    what: `Chance that all is done by the day you named: ${print.value(j)}.`,
    why: 'A plan that holds only when every guess does is late more often than not.',
    mend:
      j.status === 'ok' ? 'Plan again after each day.' : 'More windows before that day, more hands, or a later day.',
  }),
};

const about: Readonly<Record<string, string>> = {
  placed: 'Whether all work has a place in your windows',
  'safe-stops': 'Whether every window ends at a safe stop',
  attic: 'Whether work in the attic keeps to what its heat allows',
  overruns: 'How likely work runs past its window',
  crew: 'Whether there are hands enough',
  delivery: 'Whether deliveries come in time',
  'no-day': 'When a delivery comes',
  short: 'Whether deliveries bring enough',
  within: 'By when a form must be sent',
  ticks: 'Whether what is ticked off is in the plan',
};

const noDay = (j: Judged): Words => ({
  what: `“${wordsIn(j, 'name')}” has no day of arrival: the plan takes it that nothing of it has come. Waiting for it, and planned nowhere: ${some(j)}.`,
  why: 'A plan that reckons with goods nobody has promised sends people up a ladder for nothing.',
  mend: 'Ask for its day and enter it; tick on the list what is here already. Everything else is planned.',
});

const tooFarApart = 'Windows up to 200 days apart are planned at once: take the later ones out for now.';

export function words(j: Judged, print: Printer): Words {
  const word = j.id.split(':')[0] ?? j.id;
  const topic = about[word];
  if (j.status === 'unknown') {
    if (word === 'no-day') return noDay(j);
    const unknown = unknownWords(j, print, `${topic ?? 'The plan of work'} is not known yet.`);
    return j.because === 'out-of-range' ? { ...unknown, mend: tooFarApart } : unknown;
  }
  const own = say[word];
  if (!own) throw new Error(`assert: words for ${word}`);
  return own(j, print);
}
