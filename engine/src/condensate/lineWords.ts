import { numberIn } from '../plan/facts.ts';
import type { Judged, Words } from '../plan/judge.ts';
import type { Printer } from '../plan/printer.ts';

type Say = (j: Judged, print: Printer) => Words;

const length = (j: Judged, print: Printer, key: string): string => print.quantity(numberIn(j, key), 'length');
const whose = (j: Judged): string => (j.facts?.which === 'pan' ? 'The pan’s own line' : 'The second outlet’s line');

/** What is said of the way, the risers, the second line and the pump. */
export const lines: Readonly<Record<string, Say>> = {
  'vent-top': (j, print) => ({
    what:
      j.status === 'fails'
        ? `The vent’s top lies ${print.quantity(-(j.margin ?? 0), 'length')} below the rim of the unit’s pan.`
        : `The vent’s top stands ${print.value(j)} above the rim of the unit’s pan.`,
    why: 'When the drain stops, water rises in the vent as high as in the pan: a low one runs over first, beside the pan.',
    mend: j.status === 'ok' ? 'Leave it open; never cap it.' : 'Lengthen it until its open top stands above the rim.',
  }),
  'fall-of': (j, print) => ({
    what: `${j.facts?.name}: it loses ${print.value(j)}; ${print.limit(j)} is the least for its length.`,
    why: 'Water stands in the stretch that is flattest, whatever the others lose.',
    mend:
      j.status === 'ok'
        ? 'Hang it so that it cannot sag.'
        : 'Take height from a stretch that has it to spare, raise the unit, or shorten this one.',
  }),
  risers: (j, print) => ({
    what: `The risers are ${print.value(j)} high; ${print.limit(j)} is the least: ${length(j, print, 'trap')} for the trap, ${length(j, print, 'fall')} for the drain’s fall, ${length(j, print, 'rim')} over the rim of the pan.`,
    why: 'One height does three things, and the shortest of them decides.',
    mend:
      j.status === 'ok'
        ? 'Strap the unit down; risers tip.'
        : 'Higher risers before the unit stands on them; look at the headroom above it, or lead the trap down beside the joists.',
  }),
  'muggy-hour': (j, print) => ({
    what: `In the hot hour, ${print.quantity(Number(j.facts?.outdoor), 'temperature')} outdoors, the coil takes ${print.value(j)} of water out of the air in an hour; at the most its sheet allows ${print.limit(j)}, which pipe, pan and pump are held against.`,
    why: 'The drier the air, the less of it; a long muggy spell is what a drain is built for.',
    mend: j.status === 'ok' ? 'Nothing to do.' : 'Count on this for pan and pump instead.',
  }),
  'second-above': (j, print) => ({
    what: `The second outlet lies ${print.value(j)} above the first; ${print.limit(j)} is the least.`,
    why: 'At the same height it runs every day, and nobody heeds it when it matters.',
    mend: j.status === 'ok' ? 'Never join the two lines.' : 'Use the higher of the unit’s outlets for the second line.',
  }),
  'second-fall': (j, print) => ({
    what: `${whose(j)} loses ${print.value(j)}; ${print.limit(j)} is the least for its length.`,
    why: 'It lies dry for years, and then has to run at once.',
    mend: j.status === 'ok' ? 'No trap in it: it would stand dry.' : 'More fall, or a shorter way out.',
  }),
  'second-ends': (j) => ({
    what: {
      seen: `${whose(j)} ends outdoors where it is seen.`,
      hidden: `${whose(j)} ends where nobody looks.`,
      joined: `${whose(j)} is joined to the first drain: what stops one stops both.`,
      none: `${whose(j)} does not exist.`,
    }[String(j.facts?.answer) as 'seen' | 'hidden' | 'joined' | 'none'],
    why: 'Water from it is the only sign that the first drain has stopped.',
    mend:
      j.status === 'ok'
        ? 'Tell everybody in the house what water there means.'
        : 'End it over a window or a door, on its own all the way.',
  }),
  pump: (j, print) => ({
    what: `Over ${length(j, print, 'lift')} the pump lifts ${print.value(j)} in an hour; ${print.limit(j)} is wanted, twice what the unit makes at its most. It lifts no more at ${length(j, print, 'headMost')}, and draws ${print.quantity(numberIn(j, 'power'), 'electric-power')}.`,
    why: 'A pump that is just enough when new is too little with slime in it.',
    mend:
      j.status === 'ok'
        ? 'Its box level, its float free; a receptacle beside it that nobody switches off.'
        : 'A pump for more height, a wider tube, or a drain that falls.',
    caution: 'Water and electricity: its plug out before a hand goes into its box.',
  }),
  'pump-fails': (j) => ({
    what: {
      stops: 'When the pump fails, its high-water switch stops the unit.',
      sounds: 'When the pump fails it only sounds; the unit goes on making water.',
      none: 'When the pump fails nothing stops the unit.',
    }[String(j.facts?.answer) as 'stops' | 'sounds' | 'none'],
    why: 'A pump stops with its fuse, its float, or a power cut that the unit survives.',
    mend:
      j.status === 'ok'
        ? 'Lift its float by hand every spring: the unit has to stop.'
        : 'Wire its high-water switch into the unit’s control circuit, as the maker shows.',
    ...(j.status === 'ok' ? {} : { caution: 'Power locked off before control wires are touched.' }),
  }),
};

export const lineSubjects: Readonly<Record<string, string>> = {
  'vent-top': 'Whether the vent stands above the rim',
  'fall-of': 'Whether a stretch of the drain falls enough',
  risers: 'Whether the risers are high enough',
  'muggy-hour': 'How much water the muggy hour gives',
  'second-above': 'Whether the second outlet lies above the first',
  'second-fall': 'Whether the second line falls enough',
  'second-ends': 'Where the second line ends',
  pump: 'Whether the pump lifts the water',
  'pump-fails': 'What happens when the pump fails',
};
