import type { ChangeKind } from '../coupling/power/helps/change.ts';
import { numberIn } from '../plan/facts.ts';
import type { Judged } from '../plan/judge.ts';
import { done, electric, gas, has, likely, litres, type Say } from './saying.ts';

/** Each change as the end of "…, that is what would help": a thing to do. */
const doing: Readonly<Partial<Record<ChangeKind, string>>> = {
  panels: 'a kilowatt more of panels',
  steep: 'a kilowatt more of panels set steep',
  battery: 'a larger battery',
  charger: 'a charger that takes all the generator gives',
  generator: 'a larger generator and charger',
  'warm-box': 'an insulated box with a small heater for the battery',
  indoors: 'a heated place for the battery',
  'stove-days': 'a stove tended on the darkest days',
  seal: 'sealing the house',
  ceiling: 'insulating the ceilings',
  floor: 'insulating the floor',
  panes: 'second panes',
  ducts: 'sealing the ducts',
};

/** What it does not keep even new: said, since no age is told for it. */
function notKept(j: Judged): string {
  const said = [
    ...(has(j, 'coldNew') ? ['the house is cold for more than a day a year'] : []),
    ...(has(j, 'daysNew') ? ['it does not carry the darkest days'] : []),
    ...(has(j, 'generatorNew') ? ['the generator runs for more than 500 hours a year'] : []),
  ];
  return said.length === 0 ? '' : ` Even new, ${said.join(', and ')}: that only grows worse.`;
}

const broken: Readonly<Record<string, string>> = {
  cold: 'the house is cold for more than a day a year',
  days: 'it no longer carries the darkest days',
  generator: 'the generator runs for more than 500 hours a year',
  none: 'no promise that it keeps new is broken by then, and little of it is left',
};

export const sayHelps: Readonly<Record<string, Say>> = {
  'left-undone': (j, print) => ({
    what: has(j, 'kind')
      ? `One change that its fuel pays back soon would take ${print.value(j)} off the generator’s hours: ${doing[String(j.facts?.kind) as ChangeKind] ?? 'a change'}. It saves ${print.inUnit(numberIn(j, 'hours'), 'time', 'h')} and ${litres(print, numberIn(j, 'litres'))} a year.`
      : 'No single change to house, sun or battery pays itself back in fuel within five years.',
    why: `Hours of the generator are money, noise and carrying.${has(j, 'panelHours') ? ` One more kilowatt of panels buys ${print.inUnit(numberIn(j, 'panelHours'), 'time', 'h')} less and ${litres(print, numberIn(j, 'panelLitres'))} a year, at best.` : ''} Each change is tried alone; after one is done the others save something else.`,
    mend: j.status === 'ok' ? done : 'Do that one first, then look at the list again: what comes next may change.',
    caution: electric,
  }),
  'unit-choice': (j, print) => ({
    what: has(j, 'name')
      ? `With “${String(j.facts?.name)}” the generator would run for ${print.inUnit(numberIn(j, 'least'), 'time', 'h')} instead of ${print.inUnit(numberIn(j, 'hours'), 'time', 'h')} of an ordinary year.`
      : `Of ${Math.round(numberIn(j, 'count'))} candidates the chosen one lets the generator sleep most: it runs for ${print.inUnit(numberIn(j, 'hours'), 'time', 'h')} of an ordinary year.`,
    why: 'All run through the same year, behind the same ducts and on the same power. Only units that keep the house warm and that the inverter can start are set against the chosen one.',
    mend:
      j.status === 'ok'
        ? done
        : 'Look at both side by side on the own-power screen, with what the makers’ sheets leave open, before you order.',
  }),
  'aged-battery': (j, print) => ({
    what: `After ${print.value(j)} years the battery holds ${print.inUnit(numberIn(j, 'share'), 'fraction', '%')} of what it did, and ${broken[String(j.facts?.promise)] ?? broken.none}.${notKept(j)}${has(j, 'litres') ? ` At four fifths the year takes ${litres(print, numberIn(j, 'litres'))} of fuel in place of ${litres(print, numberIn(j, 'newLitres'))}.` : ''}`,
    why: 'A battery fades by age and by use, whatever its paper says; warmth hastens the one, deep cycles the other. How fast is known only as a range.',
    mend:
      likely(j) >= 10
        ? done
        : 'Plan for that year: leave room and breaker space to add to it, or choose it larger now.',
    caution: gas,
  }),
};
