import { choice, map, quantity, reference, text } from './field.ts';

/** Windows and glazed doors, each in one surface. */
export const openings = map(
  {
    name: text({ label: 'Name' }),
    surface: reference('house.surfaces', { label: 'In', neededBy: ['loads'] }),
    glazing: choice(
      {
        single: 'Single glass',
        double: 'Double glass',
        'double-coated': 'Double glass, heat-reflecting coat',
        triple: 'Triple glass',
        door: 'Solid door',
      },
      { label: 'Glass', default: 'double' },
    ),
    width: quantity('length', {
      label: 'Width',
      neededBy: ['loads'],
      plausible: { min: 0.2, max: 6 },
      possible: { min: 0 },
      usually: 'measured',
    }),
    height: quantity('length', {
      label: 'Height',
      neededBy: ['loads'],
      plausible: { min: 0.2, max: 4 },
      possible: { min: 0 },
      usually: 'measured',
    }),
    uValue: quantity('u-value', {
      label: 'Heat flow through it',
      help: 'From the label. Left empty it follows from the glass.',
      neededBy: [],
      plausible: { min: 0.5, max: 7 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    sunShare: quantity('fraction', {
      label: 'Share of the sun let in',
      help: 'Solar heat gain coefficient, from the label. Left empty it follows from the glass.',
      neededBy: [],
      plausible: { min: 0.05, max: 0.9 },
      possible: { min: 0, max: 1 },
      usually: 'nameplate',
    }),
    shade: choice(
      {
        none: 'Nothing',
        curtain: 'Light curtain',
        blind: 'Blind or drape, drawn in the sun',
        shutter: 'Outside shutter, closed in the sun',
      },
      { label: 'Covered by', default: 'none' },
    ),
    overhang: quantity('length', {
      label: 'Overhang above',
      help: 'How far it stands out.',
      default: 0,
      plausible: { min: 0, max: 4 },
      possible: { min: 0 },
      usually: 'measured',
    }),
    overhangGap: quantity('length', {
      label: 'Overhang above the glass by',
      default: { low: 0.1, likely: 0.3, high: 0.6 },
      plausible: { min: 0, max: 3 },
      possible: { min: 0 },
      usually: 'measured',
    }),
    recess: quantity('length', {
      label: 'Set back from the wall by',
      help: 'Deep reveals shade the glass from above and from both sides.',
      default: 0,
      plausible: { min: 0, max: 0.6 },
      possible: { min: 0 },
      usually: 'measured',
    }),
  },
  { label: 'Windows and doors', one: 'Window' },
);
