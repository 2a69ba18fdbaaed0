import type { QuantityKind } from '@kneewall/project';

/** What each number is called and how it is taken, by its id without the place. */
export type ReadingWords = { readonly what: string; readonly how: string; readonly kind: QuantityKind };

const gauge = 'Gauge zeroed; a small hole, the hose’s tip square to the air; plugged afterwards.';

export const readingWords: Readonly<Record<string, ReadingWords>> = {
  'air/static': {
    what: 'Pressure across the air handler',
    how: `One hose before the blower behind the filter, one after coil and blower. ${gauge}`,
    kind: 'pressure',
  },
  'commissioning/supply-static': {
    what: 'Pressure in the supply plenum against the room',
    how: `Before the first branch. ${gauge}`,
    kind: 'pressure',
  },
  'commissioning/return-static': {
    what: 'Suction behind the filter against the room',
    how: `Between filter and blower; written without its minus. ${gauge}`,
    kind: 'pressure',
  },
  'commissioning/door-pressure': {
    what: 'Pressure behind the shut door, against the hall',
    how: 'All doors shut that get shut, exhaust fans off, no wind to speak of. One hose under the door, gauge outside and zeroed; the mean of half a minute. Above the hall is plus.',
    kind: 'room-pressure',
  },
  'commissioning/filter-drop': {
    what: 'Pressure across the filter',
    how: `One hose on each side of it. ${gauge}`,
    kind: 'pressure',
  },
  'commissioning/coil-drop': { what: 'Pressure across what was added beyond the unit', how: gauge, kind: 'pressure' },
  'air/flow': {
    what: 'Flow from the register',
    how: 'Bag over the face, stop the clock when it first stands full; three times or more.',
    kind: 'flow',
  },
  'commissioning/grille-flow': {
    what: 'Flow into the return grille',
    how: 'Hood or vane over the whole face; three times or more.',
    kind: 'flow',
  },
  'commissioning/supply-air': {
    what: 'Supply air',
    how: 'In the plenum, out of sight of coil and strips, five minutes.',
    kind: 'temperature',
  },
  'commissioning/unit-return': {
    what: 'Return air at the unit',
    how: 'Right before the filter, not at the grille.',
    kind: 'temperature',
  },
  'commissioning/register-air': {
    what: 'Air from the register',
    how: 'In the middle of the face, five minutes.',
    kind: 'temperature',
  },
  'equipment/split-heating': {
    what: 'Supply air above return air',
    how: 'Both at the unit.',
    kind: 'temperature-difference',
  },
  'equipment/split-cooling': {
    what: 'Supply air below return air',
    how: 'Both at the unit.',
    kind: 'temperature-difference',
  },
  'commissioning/power': {
    what: 'Power of the unit',
    how: 'On its own circuit, indoors and outdoors together; from the house’s meter only with the house’s own draw taken off.',
    kind: 'electric-power',
  },
  'commissioning/drain': {
    what: 'Water from the drain in ten minutes',
    how: 'Caught in a measuring cup after an hour of cooling.',
    kind: 'volume',
  },
  'commissioning/running': {
    what: 'Running time in an hour',
    how: 'Watch two whole cycles, or the log.',
    kind: 'time',
  },
  'commissioning/room-offset': {
    what: 'Room air above what the control believes',
    how: 'A second thermometer beside the sensor, in the shade, ten minutes.',
    kind: 'temperature-difference',
  },
};

/** Looks without an instrument, by their id without the place: what yes means. */
export const lookWords: Readonly<Record<string, string>> = {
  'look/filter': 'Is the filter grey, matted, dense or small?',
  'look/run': 'Is the run crushed, kinked, off or torn?',
  'look/register': 'Is the register or its damper shut?',
  'look/door-gap': 'Is the way for air out of the shut room missing or stuffed?',
  'look/return-way': 'Is the return grille covered, shut or collapsed behind?',
  'look/return-smoke': 'Is smoke drawn in along the return box?',
  'look/supply-smoke': 'Is smoke blown off along plenum, trunk or a run’s ends?',
  'look/setting': 'Does the blower stand at another setting than planned?',
  'look/speed': 'Does the display show another speed?',
  'look/strips': 'Does the power fall when the strips’ breaker is switched off?',
  'look/insulation': 'Is insulation missing along the ducts?',
  'look/pan': 'Does water stand in the pan, or none come out?',
  'look/sensor': 'Is the sensor in sun, supply air or on an outer wall?',
  'look/gauge-hoses': 'Was a hose off, swapped, or the gauge not at zero?',
};

/** What a number or look is called, with its place. */
export function readingName(id: string, at: string): string {
  const [key = ''] = id.split(':');
  const name = readingWords[key]?.what ?? lookWords[key] ?? key;
  return at === '' ? name : `${name}, “${at}”`;
}
