import { numberIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';
import { unknownWords } from '../plan/unknownWords.ts';
import { aboutRecorded, sayRecorded } from './recordedWords.ts';
import { done, type Say } from './saying.ts';

const hours = (seconds: number, print: Printer): string =>
  seconds === 0 ? 'no hour' : print.inUnit(seconds, 'time', 'h');
const litres = (print: Printer, amount: number): string =>
  print.inUnit(amount / 1000, 'volume', print.system === 'us' ? 'gal' : 'L');
const likely = (j: Judged): number => (j.value.ok && typeof j.value.value === 'number' ? j.value.value : 0);
const days = (n: number): string => `${Math.round(n)} ${Math.round(n) === 1 ? 'day' : 'days'}`;
/** `3 of 20 winters` */
const inWinters = (j: Judged): string =>
  likely(j) === 0 ? `none of ${numberIn(j, 'of')} winters` : `${likely(j)} of ${numberIn(j, 'of')} winters`;

const made =
  'The winters are made, not recorded: their spells within a month are held against weather files, how rare the rarest is nobody has tested.';
const stove = 'A stove needs its own combustion air and a sound chimney, and carbon monoxide alarms beside it.';
const exhaust =
  'A generator’s exhaust kills: outdoors only, far from windows and intakes, with carbon monoxide alarms in the house, and never into the house’s wiring but through a transfer switch.';
const gas =
  'A failing lithium battery gives off gas that burns and poisons: keep it out of bedrooms and escape ways, and follow the local fire code for where it may stand.';

/** The longest dark spell, and whether it is got through without the generator. */
const spells = (j: Judged): string =>
  `In the middle winter sun gives less than half of what is drawn for up to ${Math.round(numberIn(j, 'longestDark'))} days on end, in one of ten for ${Math.round(numberIn(j, 'longestDarkTenth'))}; without a generator the longest such spell got through without want is ${days(numberIn(j, 'survivedDark'))}.`;

/** What that asks of whoever feeds the fire. */
const fed = (j: Judged, print: Printer): string =>
  numberIn(j, 'stove') === 0
    ? ''
    : ` That is with the stove burning for ${hours(numberIn(j, 'stove') * 3600, print)} of the middle winter, fed as its room asks, at night too.`;

const say: Readonly<Record<string, Say>> = {
  ...sayRecorded,
  'winters-heat': (j, print) => ({
    what: `In ${inWinters(j)} power leaves the house more than ${print.quantity(3, 'temperature-difference')} too cold for more than ${hours(numberIn(j, 'most'), print)}: for ${hours(numberIn(j, 'cold') * 3600, print)} in the middle winter, ${hours(numberIn(j, 'coldTenth') * 3600, print)} in one of ten, down to ${print.quantity(numberIn(j, 'lowestTenth'), 'temperature')}. ${spells(j)}${numberIn(j, 'anywayTenth') > 0 ? ` In one winter of ten the unit is too small for ${hours(numberIn(j, 'anywayTenth') * 3600, print)} with all the power it could take.` : ''}`,
    why: `Pipes freeze in the one winter that one ordinary year does not show. ${made}`,
    mend:
      j.status === 'ok'
        ? 'Nothing to do; keep a second source of heat for what no winter here shows.'
        : 'Seal and insulate first; then panels, a larger generator, and a stove with wood for those hours.',
    caution: stove,
  }),
  'winters-alone': (j, print) => ({
    what: `If the generator never starts, in ${inWinters(j)} the house is too cold for want of power for more than a week: for ${hours(numberIn(j, 'aloneCold') * 3600, print)} in the middle winter, ${hours(numberIn(j, 'aloneColdTenth') * 3600, print)} in one of ten, down to ${print.quantity(numberIn(j, 'aloneLowestTenth'), 'temperature')}.${fed(j, print)}`,
    why: `That much hangs on one engine and its fuel. ${made}`,
    mend:
      j.status === 'ok'
        ? done
        : 'Have a source of heat that needs no electricity and carries the house alone, fuel and parts for the engine, and a plan for draining the pipes.',
    caution: stove,
  }),
  'winters-fuel': (j, print) => ({
    what: `The generator runs for ${hours(numberIn(j, 'generatorHours') * 3600, print)} and burns ${litres(print, numberIn(j, 'litres'))} in the middle winter; in one winter of ten for ${hours(numberIn(j, 'generatorHoursTenth') * 3600, print)} and ${litres(print, numberIn(j, 'litresTenth'))} or more.`,
    why: `Fuel that is not there in the hard winter cannot be fetched through it. ${made}`,
    mend:
      j.status === 'ok'
        ? 'Store fuel for the hard winter, not for the middle one.'
        : 'Store fuel for the hard winter, not for the middle one; look at the lines of hours over panels and battery for what another size would spare.',
    caution: exhaust,
  }),
  'winters-mornings': (j, print) => ({
    what: `On ${Math.round(numberIn(j, 'coldMornings'))} mornings of the middle winter the cells are too cold to charge, on ${print.value(j)} or more in one winter of ten.`,
    why: `Sun is turned away just when it is scarce, and a cell charged below freezing is damaged for good. ${made}`,
    mend:
      j.status === 'ok'
        ? done
        : 'An insulated box with a small heater, or a heated room where the fire code allows it.',
    caution: gas,
  }),
};

const about: Readonly<Record<string, string>> = {
  ...aboutRecorded,
  'winters-heat': 'in how many of 20 winters power leaves the house cold',
  'winters-alone': 'in how many of 20 winters the house is cold if the generator does not start',
  'winters-fuel': 'what fuel one winter in ten asks',
  'winters-mornings': 'how many mornings are too cold to charge in one winter of ten',
};

/** Words of the findings of many winters; undefined for others. */
export function wintersWords(j: Judged, print: Printer): Words | undefined {
  const spoken = say[j.id];
  if (!spoken) return undefined;
  if (j.status !== 'unknown') return spoken(j, print);
  const words = unknownWords(j, print, `It is not known yet ${about[j.id]}.`);
  if (j.because !== 'pending') return words;
  return {
    ...words,
    mend: `Work out the ${j.id in sayRecorded ? 'recorded' : 'twenty'} winters with the button on the page of own power, or with “kneewall check --long”. It takes some minutes.`,
  };
}
