import { numberIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';
import { unknownWords } from '../plan/unknownWords.ts';
import { controlWords } from './controlWords.ts';
import { aboutGrid, aboutHelps, sayGrid } from './gridMessages.ts';
import { sayHelps } from './helpMessages.ts';
import { done, electric, gas, has, hours, inDays, likely, litres, type Say } from './saying.ts';
import { wintersWords } from './wintersWords.ts';

/** One year passes: that is no promise for the next. */
const doneForOne = 'Nothing to do for a year like this one. Before you rely on it, work out the twenty winters.';
/** `3:40` */
const clock = (hour: number): string => {
  const minutes = Math.round(hour * 60) % 1440;
  return `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
};

/** How long the unit is held back, and what a stove makes good. */
const heldWords = (j: Judged, print: Printer): string => {
  if (numberIn(j, 'hours') === 0) return 'The unit is never held back.';
  const held = `The unit is held back for ${print.inUnit(numberIn(j, 'hours') * 3600, 'time', 'h')} and lacks ${print.inUnit(numberIn(j, 'missing'), 'energy', 'kWh')} of heat; `;
  const stove = `the stove burns for ${print.inUnit(numberIn(j, 'burning') * 3600, 'time', 'h')} and gives ${print.inUnit(numberIn(j, 'stove'), 'energy', 'kWh')} of it, fed as its room asks, at night too; `;
  const lowest = `the room with the thermostat falls to ${print.quantity(numberIn(j, 'lowest'), 'temperature')}.`;
  return `${held}${numberIn(j, 'burning') > 0 ? stove : ''}${lowest}`;
};

const ordinary = 'One ordinary year states energy and promises nothing: twenty winters say how often it fails.';
const exhaust =
  'A generator’s exhaust kills: outdoors only, far from windows and intakes, with carbon monoxide alarms in the house, and never into the house’s wiring but through a transfer switch.';

const say: Readonly<Record<string, Say>> = {
  'smarter-control': controlWords,
  ...sayHelps,
  ...sayGrid,
  'learned-household': (j, print) => ({
    what: `Beside the unit the house is planned to use ${print.value(j)} a day: the log “${String(j.facts?.log)}” taught that${j.facts?.from ? `, ${String(j.facts.from)} to ${String(j.facts.to)}` : ''}. ${has(j, 'before') ? `Entered were ${print.quantity(numberIn(j, 'before'), 'energy')}.` : ''}`,
    why: 'Battery, generator and bills follow what the house takes beside the unit, most of all at night. The range counts the seasons that were not logged.',
    mend: 'Nothing to do. On the page of commissioning it can be taken back in one step.',
  }),
  'heat-hours': (j, print) => ({
    what:
      likely(j) === 0
        ? `In this one ordinary year power leaves the house cold in no hour. ${heldWords(j, print)}`
        : `For ${hours(j, print)} of an ordinary year the house is more than ${print.quantity(3, 'temperature-difference')} too cold for want of power. ${heldWords(j, print)}`,
    why: `An empty battery cools the house, and pipes freeze in a cold one. ${ordinary}`,
    mend:
      j.status === 'ok'
        ? doneForOne
        : 'Keep the stove and its wood for those hours. Seal and insulate first, then look at more panels, and at a generator that starts by itself.',
    caution: electric,
  }),
  'without-generator': (j, print) => ({
    what:
      likely(j) === 0
        ? `Even if the generator never starts, no hour of this one ordinary year is cold. ${heldWords(j, print)}`
        : `If the generator does not start, the house is more than ${print.quantity(3, 'temperature-difference')} too cold for ${hours(j, print)} of an ordinary year. ${heldWords(j, print)}`,
    why: `That much hangs on one engine. ${ordinary}`,
    mend:
      j.status === 'ok'
        ? doneForOne
        : numberIn(j, 'burning') > 0
          ? 'The stove is too small for that alone, or too far from the other rooms. Seal and insulate first, and have a plan for draining the pipes.'
          : 'Have a second source of heat that needs no electricity, such as a stove, with wood for those hours, and enter it; and have a plan for draining the pipes.',
    caution: 'A stove needs its own combustion air and a sound chimney, and carbon monoxide alarms beside it.',
  }),
  'generator-hours': (j, print) => ({
    what: `The generator runs for ${hours(j, print)} of an ordinary year, starts ${Math.round(numberIn(j, 'starts'))} times and burns ${litres(print, numberIn(j, 'litres'))} of ${String(j.facts?.fuel)}.`,
    why: `Fuel has to be carried and stored, and a small set wants service every few hundred hours. ${ordinary}`,
    mend:
      j.status === 'ok'
        ? done
        : `Take from what the house needs first: seal, insulate, wrap the ducts.${has(j, 'lower') ? ` Kept ${print.quantity(2, 'temperature-difference')} cooler, it runs for ${print.inUnit(numberIn(j, 'lower'), 'time', 'h')}.` : ''}${has(j, 'boxed') ? ` With the battery in a warm box, for ${print.inUnit(numberIn(j, 'boxed'), 'time', 'h')}.` : ''} Then more panels; more battery helps only where sun is thrown away.`,
    caution: exhaust,
  }),
  'generator-load': (j, print) => ({
    what: `In ${print.value(j)} of its hours the generator runs below the load it should have.`,
    why: 'An engine that idles for long soots up, and burns nearly as much as at half load.',
    mend:
      j.status === 'ok'
        ? done
        : 'Give it a larger charger or a warmer battery, so that it charges hard and rests, or take a smaller set.',
    caution: exhaust,
  }),
  'dark-days': (j, print) => ({
    what: `A full battery carries the house for ${inDays(likely(j), print)} without any sun or generator in days of about ${print.quantity(numberIn(j, 'outdoor'), 'temperature')}${has(j, 'mildDays') ? `, for ${inDays(numberIn(j, 'mildDays'), print)} at ${print.quantity(numberIn(j, 'mild'), 'temperature')}` : ''}. In this one ordinary year, for up to ${Math.round(numberIn(j, 'spell'))} days on end, the sun gives less than half of what is drawn; without the generator the longest such spell that passes without want lasts ${Math.round(numberIn(j, 'survived'))}.`,
    why: `Dark and cold come together, and nobody mends a generator in an hour. ${ordinary}`,
    mend:
      j.status === 'ok'
        ? doneForOne
        : 'Lower the set point while it is dark, give up what can wait, and keep a stove. A larger battery lasts longer but has to be filled by something.',
    caution: gas,
  }),
  'standing-share': (j, print) => ({
    what: `What never rests (inverter, standby, heaters of crankcase, pan and battery) takes ${print.quantity(numberIn(j, 'daily'), 'energy')} a day in winter: ${print.value(j)} of all electricity.`,
    why: 'It is drawn every hour of the dark week, whether the unit heats or not.',
    mend:
      j.status === 'ok'
        ? done
        : 'Ask the maker which heaters may be switched by outdoor temperature; an inverter of the right size idles on less.',
  }),
  'empty-nights': (j, print) => ({
    what:
      likely(j) === 0
        ? 'Without the generator, no night of this one ordinary year empties a battery that is more than half full at dusk.'
        : `Without the generator, ${print.value(j)} nights of an ordinary year empty a battery that is more than half full at dusk${has(j, 'hour') ? `, usually by ${clock(numberIn(j, 'hour'))}` : ''}.`,
    why: 'Running at low speed all night looks harmless and is what empties it.',
    mend:
      j.status === 'ok'
        ? doneForOne
        : 'Warm the house while the sun shines and let it fall by a few degrees at night, or let the generator run in the evening rather than before dawn.',
  }),
  'cold-cells': (j, print) => ({
    what:
      likely(j) === 0
        ? 'The cells are warm enough to charge on every morning of this one ordinary year.'
        : `On ${print.value(j)} mornings of an ordinary year the cells are below freezing and take no charge; ${print.inUnit(numberIn(j, 'refused'), 'energy', 'kWh')} of sun a year are turned away.`,
    why: 'Lithium cells charged below freezing are damaged for good and can fail later; their electronics refuse, and the sun goes to waste just when it is scarce.',
    mend:
      j.status === 'ok'
        ? doneForOne
        : numberIn(j, 'heater') > 0
          ? 'The heater is too small for the box, or starves with the battery: insulate the box first.'
          : `Put them into an insulated box with a small heater, or into a heated room where the fire code allows it.${has(j, 'boxed') ? ` A box of 50 mm (2 in) of foam with a heater of ${print.quantity(150, 'electric-power')} leaves ${numberIn(j, 'boxed')} such mornings${has(j, 'boxedHours') ? ` and ${print.inUnit(numberIn(j, 'boxedHours'), 'time', 'h')} of generator` : ''}.` : ''}`,
    caution: gas,
  }),
  'battery-life': (j, print) => ({
    what: `The battery goes through ${Math.round(numberIn(j, 'cycles'))} full cycles a year and should last ${print.value(j)} years.`,
    why: 'It is the dearest part to buy again. Heat ages it while it rests, deep cycles while it works.',
    mend:
      j.status === 'ok'
        ? done
        : 'A larger battery, or less drawn at night, makes fewer cycles of it. Keep it cool in summer.',
    caution: gas,
  }),
};

const about: Readonly<Record<string, string>> = {
  ...aboutHelps,
  ...aboutGrid,
  'heat-hours': 'whether there is power enough for heat all year',
  'without-generator': 'what happens if the generator does not start',
  'generator-hours': 'how long the generator runs',
  'generator-load': 'whether the generator runs under enough load',
  'dark-days': 'how many days without sun the battery lasts',
  'standing-share': 'how much is drawn by what never rests',
  'empty-nights': 'on how many nights the battery gives out',
  'cold-cells': 'on how many mornings the cells are too cold to charge',
  'battery-life': 'how long the battery lasts',
  'smarter-control': 'what cleverer control could save',
  'learned-household': 'what the house takes beside the unit',
};

export function words(j: Judged, print: Printer): Words {
  const ofWinters = wintersWords(j, print);
  if (ofWinters) return ofWinters;
  if (j.status === 'unknown')
    return unknownWords(j, print, `It is not known yet ${about[j.id] ?? 'how the power holds out'}.`);
  const spoken = say[j.id];
  if (!spoken) throw new Error(`assert: no words for ${j.id}`);
  return spoken(j, print);
}
