import { numberIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';

const share = (j: Judged, key: string, print: Printer): string => print.quantity(numberIn(j, key), 'fraction');

/** What other control could save, and the rule that gets part of it. */
export function controlWords(j: Judged, print: Printer): Words {
  const fuel = j.facts?.of === 'fuel';
  const what = fuel ? 'the generator’s fuel' : 'the cold hours, each weighed by how cold it is';
  const none = numberIn(j, 'best') === 0;
  const kelvins = (key: string): string => print.quantity(numberIn(j, key), 'temperature-difference');
  return {
    what: none
      ? `Nothing of ${what} could be saved by cleverer control.`
      : `A simple rule saves ${share(j, 'rule', print)} of ${what} with a good forecast of tomorrow’s sun, ${share(j, 'today', print)} if tomorrow is taken to be like today; a house that is always ${kelvins('less')} cooler saves ${share(j, 'cooler', print)}. No control, however clever, can save more than ${share(j, 'best', print)} with cells as cold as they are now.`,
    why: none
      ? 'Then only more sun, more battery or less heat would change it.'
      : `The last number is not a promise: it knows the whole year’s weather beforehand${fuel ? ' and never runs the generator at part load' : ''}. Battery${fuel ? ' and generator' : ''} run at the right hours alone would save ${share(j, 'timing', print)}; the rest is the house used as a store of heat.`,
    mend: none
      ? 'Nothing to do.'
      : `Set, by hand or by whatever switches your system: ${kelvins('ahead')} warmer while the battery is full and sun is turned away${fuel ? `; ${kelvins('less')} cooler while the generator runs, and in the dark before a dark day; the generator off from ${share(j, 'restAt', print)} of charge where the next day’s sun gives half of a day’s use` : `; ${kelvins('less')} cooler in the dark before a dark day`}. Never rely on it to keep pipes from freezing.`,
  };
}
