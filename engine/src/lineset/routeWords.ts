import { numberIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';

type Say = (j: Judged, print: Printer) => Words;
const long = (j: Judged, print: Printer, key: string): string => print.quantity(numberIn(j, key), 'length');
const endOf = (j: Judged): string => (j.id.endsWith(':handler') ? 'the air handler' : 'the outdoor unit');
const nothing = 'Nothing to do.';

/** Words for the way of the line, its ends, and who hears the unit. */
export const routeWords: Readonly<Record<string, Say>> = {
  'run-beside': (j, print) => ({
    what: `The place on the wall decides: ${long(j, print, 'way')} of line by its way. The ${long(j, print, 'run')} that you entered for the whole way does not count beside it.`,
    why: 'Two figures for one line: the wrong one buys the wrong set.',
    mend:
      j.status === 'ok'
        ? 'They agree within the spare. Empty the entered length, or keep it as a check.'
        : 'Lay a rope along the way. If the rope says the entered length, something is drawn wrong; if the place has moved since, empty the entered one.',
  }),
  'inside-way': (j, print) => ({
    what:
      j.facts?.entered === undefined
        ? `Inside, the shortest way from the air handler out through the wall takes ${long(j, print, 'shortest')} with ${j.facts?.bends} bends; that is what counts.`
        : `Inside, ${long(j, print, 'entered')} is entered; the shortest way round what stands there takes ${long(j, print, 'shortest')} with ${j.facts?.bends} bends.`,
    why: 'A line cannot be shorter than the shortest way, and a set that ends short cannot be lengthened.',
    mend:
      j.status === 'ok' ? 'Measure it with a rope all the same.' : 'Measure again, or see what is drawn in its way.',
  }),
  'inside-bends': (j, print) => ({
    what:
      j.status === 'fails'
        ? `Two bends inside lie ${long(j, print, 'lacks')} too near to each other, or to an end, for their radius.`
        : `Every straight stretch inside leaves its bends room, the tightest ${print.value(j)}.`,
    why: 'A bend that is forced kinks, and a kink ends the set.',
    mend: j.status === 'ok' ? nothing : 'A wider way round, or one slanting stretch in place of two corners.',
  }),
  hole: (j, print) => ({
    what: `The sleeve is ${print.value(j)} across inside; the widest coupling with the other line beside it takes ${print.limit(j)}.`,
    why: 'Couplings filled at the factory go through whole. A hole made larger afterwards is made round a line that hangs in it.',
    mend:
      j.status === 'ok'
        ? 'Sloping outward; sealed inside against air and outside against rain.'
        : 'A larger sleeve. Never take a coupling apart to pass it.',
  }),
  spanners: (j, print) => ({
    what: `Beside the couplings at ${endOf(j)} ${print.value(j)} are free; two spanners want ${print.limit(j)}.`,
    why: 'One spanner turns, the other holds: with one alone the tube twists off.',
    mend: j.status === 'ok' ? nothing : 'Move whatever is in the way, or turn the unit, before anything is ordered.',
  }),
  straight: (j, print) => ({
    what: `Straight on from the couplings at ${endOf(j)} ${print.value(j)} are free; a straight piece and the bend want ${print.limit(j)}.`,
    why: 'A bend that begins in the coupling strains its seal, and it leaks in a year.',
    mend: j.status === 'ok' ? nothing : 'Move the unit away from what is in the way.',
  }),
  spare: (j, print) => ({
    what: `${long(j, print, 'length')} are left over. ${Number(j.facts?.turns) === 1 ? 'One flat turn takes' : `${j.facts?.turns} flat turns take`} ${print.limit(j)} across; ${print.value(j)} are free ${places[String(j.facts?.where)] ?? 'there'}.`,
    why: 'A tight upright coil traps oil and liquid, and a set filled at the factory may not be cut.',
    mend:
      j.status === 'ok'
        ? 'Flat, clipped, no turn above the other where it can be had.'
        : 'Another place for it, or a place for the unit that takes up more of the line.',
  }),
  'night-sound': (j, print) => ({
    what: `At the nearest window somebody sleeps behind the outdoor unit is heard at ${print.value(j)} when it is loudest; ${print.limit(j)} is a usual night limit.`,
    why: 'It runs loudest in the coldest nights. The local ordinance, and the neighbours’ windows, decide.',
    mend: j.status === 'ok' ? nothing : 'Round a corner, farther away, or a night mode; soft feet under it.',
  }),
  'neighbour-sound': (j, print) => ({
    what: `At the neighbour’s window the outdoor unit is heard at ${print.value(j)} when it is loudest; ${print.limit(j)} is a usual night limit.`,
    why: 'They did not choose it, and they sleep when it is coldest. Fence and second wall are counted by one middle tone.',
    mend:
      j.status === 'ok'
        ? 'Tell them before it hangs.'
        : 'Another wall, a solid fence higher than the unit, or a night mode. Ask them first.',
  }),
  'line-sound': (j, print) => ({
    what: `At the property line the outdoor unit is heard at ${print.value(j)} when it is loudest; ${print.limit(j)} is allowed there.`,
    why: 'The ordinance is measured at that line, and a unit that breaks it has to move.',
    mend: j.status === 'ok' ? nothing : 'Farther from the line, or a solid fence between.',
  }),
  drip: (j, print) => ({
    what: `The outdoor unit lies ${print.value(j)} from a wall whose eave drips or slides; ${print.limit(j)} keeps it clear.`,
    why: 'What drips on it freezes into its fins, and a sliding roof breaks its fan.',
    mend: j.status === 'ok' ? nothing : 'A gutter and snow stops above, a small roof over it, or a gable wall.',
  }),
};

const places: Readonly<Record<string, string>> = {
  attic: 'on the attic floor',
  behind: 'on the ground behind the unit',
  wall: 'under the cover on the wall',
};

export const routeSubjects: Readonly<Record<string, string>> = {
  'run-beside': 'Whether the entered length agrees with the place',
  'inside-way': 'Whether the way inside is long enough',
  'inside-bends': 'Whether the bends inside have room',
  hole: 'Whether the couplings pass the wall',
  spanners: 'Whether two spanners have room',
  straight: 'Whether the line leaves its couplings straight',
  spare: 'Whether the spare length has its place',
  'night-sound': 'Whether the outdoor unit is quiet enough at night',
  'neighbour-sound': 'Whether the neighbours can sleep',
  'line-sound': 'Whether the property line is quiet enough',
  drip: 'Whether an eave drips on the outdoor unit',
};
