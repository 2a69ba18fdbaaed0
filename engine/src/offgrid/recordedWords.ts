import { numberIn, wordsIn } from '../plan/facts.ts';
import type { Judged } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';
import { likely, litres, type Say } from './saying.ts';

const measured =
  'These winters were measured, each file the end of one winter and the beginning of the next, run as one; they say what has been, not how rare the next is.';
const stove = 'A stove needs its own combustion air and a sound chimney, and carbon monoxide alarms beside it.';

/** `3 of 12 recorded winters` */
const inWinters = (j: Judged): string =>
  `${likely(j) === 0 ? 'none' : likely(j)} of ${numberIn(j, 'of')} recorded winters`;

const time = (seconds: number, print: Printer): string => print.inUnit(seconds, 'time', 'h');

const worst = (j: Judged, print: Printer): string =>
  numberIn(j, 'hours') === 0
    ? ''
    : ` At worst, in ${wordsIn(j, 'name')}, for ${time(numberIn(j, 'hours') * 3600, print)}, down to ${print.quantity(numberIn(j, 'lowest'), 'temperature')}.`;

export const sayRecorded: Readonly<Record<string, Say>> = {
  'recorded-heat': (j, print) => ({
    what: `In ${inWinters(j)} power leaves the house too cold for more than ${time(numberIn(j, 'most'), print)}.${worst(j, print)}${numberIn(j, 'litres') > 0 ? ` The generator burns up to ${litres(print, numberIn(j, 'litres'))} in one of them.` : ''}`,
    why: `A measured winter is what the place has done. ${measured}`,
    mend:
      j.status === 'ok'
        ? 'Nothing to do for winters like these; look at the made ones too, which hold spells that these do not.'
        : 'Seal and insulate first; then panels, a larger generator, and a stove with wood for those hours.',
    caution: stove,
  }),
  'recorded-alone': (j, print) => ({
    what: `If the generator never starts, in ${inWinters(j)} the house is too cold for want of power for more than a week.${worst(j, print)}${numberIn(j, 'stove') > 0 ? ` The stove burns for up to ${time(numberIn(j, 'stove') * 3600, print)} of a winter, fed as its room asks, at night too.` : ''}`,
    why: `That much hangs on one engine and its fuel. ${measured}`,
    mend:
      j.status === 'ok'
        ? 'Nothing to do.'
        : 'Have a source of heat that needs no electricity and carries the house alone, fuel and parts for the engine, and a plan for draining the pipes.',
    caution: stove,
  }),
};

/** What they are about, where they are not known yet. */
export const aboutRecorded: Readonly<Record<string, string>> = {
  'recorded-heat': 'in how many recorded winters the house is cold',
  'recorded-alone': 'in how many recorded winters the house is cold without the generator',
};
