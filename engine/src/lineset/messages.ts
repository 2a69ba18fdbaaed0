import { numberIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';
import { unknownWords } from '../plan/unknownWords.ts';
import type { Fits } from './result.ts';
import { routeSubjects, routeWords } from './routeWords.ts';

type Say = (j: Judged, print: Printer) => Words;

const long = (j: Judged, print: Printer, key: string): string => print.quantity(numberIn(j, key), 'length');
const has = (j: Judged, key: string): boolean => j.facts?.[key] !== undefined;

const licensed =
  'Refrigerant stands under pressure, freezes skin and may burn: opening, filling and testing lines is licensed work in most places.';

const say: Readonly<Record<string, Say>> = {
  ...routeWords,
  reach: (j, print) => ({
    what:
      j.status === 'fails'
        ? `The longest set for sale, ${long(j, print, 'set')}, ends ${print.quantity(numberIn(j, 'needed') - numberIn(j, 'set'), 'length')} short of the place.`
        : `${has(j, 'shorter') ? `The ${long(j, print, 'shorter')} set ends ${long(j, print, 'short')} short of the place; the` : 'The'} ${long(j, print, 'set')} one leaves ${print.quantity(numberIn(j, 'set') - numberIn(j, 'needed'), 'length')} to lose.`,
    why: 'A pre-charged set cannot be lengthened, and one that is too short decides where the unit hangs.',
    mend:
      j.status === 'ok'
        ? 'Lay the spare as one wide, flat loop where it can be reached; never as a tight upright coil.'
        : j.status === 'tight'
          ? 'Measure the way once more with a rope, bends and all, before anything is ordered.'
          : 'Bring the unit nearer, lead the line out of the wall elsewhere, or find a longer set.',
  }),
  'length-most': (j, print) => ({
    what: `The set is ${print.value(j)} long; the unit allows ${print.limit(j)}.`,
    why: 'Beyond that it loses capacity and oil, and the warranty.',
    mend: j.status === 'ok' ? 'Nothing to do.' : 'A shorter way, or a unit that allows more.',
  }),
  'length-least': (j, print) => ({
    what: `The set is ${print.value(j)} long; the unit wants ${print.limit(j)} at the least.`,
    why: 'Too short a line sends liquid back and carries the noise into the house.',
    mend: j.status === 'ok' ? 'Nothing to do.' : 'Take the next longer set and lay it in a wide loop.',
  }),
  rise: (j, print) => ({
    what: `${print.value(j)} lie between the two units in height; the unit allows ${print.limit(j)}.`,
    why: 'Oil has to climb back with the gas.',
    mend: j.status === 'ok' ? 'Nothing to do.' : 'Hang the outdoor unit higher, or take one that allows more.',
  }),
  place: (j) => ({
    what: {
      yes: 'The outdoor unit fits its place, with its clearances.',
      'off-wall': 'At its place the outdoor unit stands out beyond the wall.',
      covers: 'At its place the outdoor unit covers a window, a door or something else on the wall.',
      'too-near':
        'At its place the outdoor unit stands too near a window, a door or something else for its clearances.',
      'too-high': 'At its place the outdoor unit hangs higher than it can be lifted, cleaned and reached.',
      'no-footing': 'Before its place nobody can stand firmly to lift, clean or mend the outdoor unit.',
      ice: 'At its place the water of its defrosts falls on a walk, a step or before a door, and freezes there.',
      line: 'At its place the outdoor unit lies nearer to the property line than allowed, or beyond it.',
    }[String(j.facts?.fits) as Fits],
    why:
      String(j.facts?.fits) === 'ice'
        ? 'Litres of water a day, in the coldest weather, where people walk: somebody falls.'
        : 'It has to breathe, and somebody has to lift it there and reach every side with two spanners.',
    mend:
      j.status === 'ok'
        ? 'Look once more whether it can be lifted there, and cleaned there in ten years.'
        : 'Move it; the map of the wall shows where it fits.',
  }),
  snow: (j, print) => ({
    what: `The base of the outdoor unit lies ${print.value(j)} above the ground; with the snow to allow for it takes ${print.limit(j)}.`,
    why: 'A unit that stands in snow cannot breathe and cannot drain the water of its defrosts; that water freezes into its fins.',
    mend: j.status === 'ok' ? 'Not under an eave that drips or slides.' : 'Hang it higher, or set it on a stand.',
  }),
  anchor: (j, print) => ({
    what: `In the strongest gust, with ice on the unit, each upper bolt of the bracket is pulled as by ${print.value(j)}; a quarter of what the anchor gives way at is ${print.limit(j)}.`,
    why: 'A unit that comes off a wall in a storm falls on whoever stands below.',
    mend:
      j.status === 'ok'
        ? 'Into framing or sound masonry, never into boards alone. The maker of the anchor, or a structural engineer, decides.'
        : 'More or stronger anchors, a bracket that reaches farther down, or a stand on the ground: ask a structural engineer.',
    caution:
      'A reckoning for planning without load factors: it approves no anchor. Nobody stands under the unit while it is lifted.',
  }),
  'room-rule': (j, print) => ({
    what: `With the line filled the unit holds ${print.value(j)} of a refrigerant that burns; ${has(j, 'area') ? `for the ${print.quantity(numberIn(j, 'area'), 'area')} that its ducts serve, air let in at the ceiling, ` : ''}${print.limit(j)} is the most by the published rule${numberIn(j, 'free') >= (j.limit.max ?? 0) ? ', below which no room is too small' : ''}.`,
    why: 'If it all leaked into too small a room the air could burn. An attic with the air handler is not a room served.',
    mend:
      j.status === 'ok'
        ? 'The maker’s own table and the code stand above this. Leak detector and blower start as the maker asks.'
        : 'A shorter line, a unit with less charge, or one with another refrigerant: ask the maker and the authority.',
    caution: licensed,
  }),
};

const subjects: Readonly<Record<string, string>> = {
  ...routeSubjects,
  reach: 'Whether a line set reaches the outdoor unit',
  'length-most': 'Whether the line set is short enough for the unit',
  'length-least': 'Whether the line set is long enough for the unit',
  rise: 'Whether the height between the units is allowed',
  place: 'Whether the outdoor unit fits its place',
  snow: 'Whether the outdoor unit stands above the snow',
  anchor: 'Whether the anchors of the bracket hold',
  'room-rule': 'Whether the rooms are large enough for a refrigerant that burns',
};

export function words(j: Judged, print: Printer): Words {
  if (j.status === 'unknown') return unknown(j, print);
  const found = say[wordOf(j.id)];
  if (!found) throw new Error(`assert: no words for the finding ${j.id}`);
  return found(j, print);
}

/** Words are one for both ends of the line. */
const wordOf = (id: string): string => id.split(':')[0] ?? id;

function unknown(j: Judged, print: Printer): Words {
  const what = `${subjects[wordOf(j.id)] ?? 'This'} is not known yet.`;
  if (j.id === 'room-rule' && j.because === 'out-of-range')
    return {
      what: 'Whether its refrigerant burns is not known: its name is in no list here.',
      why: 'One that burns asks for large enough rooms, a detector and a blower that starts by itself.',
      mend: 'Read the plate: letters such as A2L or A3 beside the name mean that it burns. Then the maker’s table and the code decide.',
      caution: licensed,
    };
  const why = 'The length of a pre-charged line decides where the unit hangs, and is bought once.';
  if (j.because !== 'out-of-range') return unknownWords(j, print, what, why);
  return {
    what,
    why,
    mend: 'No way leads there: move the place, or where the line comes out; inside, see that spaces touch and nothing walls them off.',
  };
}
