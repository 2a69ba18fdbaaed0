import { choice, group, quantity } from './field.ts';

const optional = (label: string, most: number, usually: 'nameplate' | 'measured', help?: string) =>
  quantity('length', {
    label,
    ...(help ? { help } : {}),
    neededBy: [],
    plausible: { min: 0.05, max: most },
    possible: { above: 0 },
    usually,
  });

const opening = (label: string, help: string) =>
  group(
    {
      width: optional('Width inside', 1.5, 'nameplate'),
      height: optional('Height inside', 1, 'nameplate'),
    },
    { label, help },
  );

/** Where air enters and leaves a unit: flange to flange, by its sheet or a tape. */
export const unitOpenings = group(
  {
    supply: opening(
      'Supply opening',
      'Where air leaves it. Inside the flange, by the drawing in its data sheet; measured on the unit it is surer.',
    ),
    return: opening('Return opening', 'Where air enters it. Inside the flange.'),
  },
  { label: 'Openings of the air handler', help: 'Left empty, no piece between unit and boxes is drawn.' },
);

const aside = (label: string, help: string) =>
  quantity('length', {
    label,
    help,
    default: 0,
    plausible: { min: -0.6, max: 0.6 },
    usually: 'measured',
  });

const joint = (label: string) =>
  group(
    {
      right: aside(
        'The duct’s middle lies to the right of the opening’s by',
        'Seen from the unit, looking along the duct; a minus before it is to the left. Left empty: in line.',
      ),
      up: aside(
        'and above it by',
        'A minus before it is below. Left empty: level. A box that stands on the same platform is often off by half of what it is higher.',
      ),
      length: optional(
        'Length of the piece between them',
        2,
        'measured',
        'Left empty it is as long as its slopes want it.',
      ),
      made: choice(
        { same: 'The same as the duct it leads to', metal: 'Sheet metal' },
        { label: 'It is made of', default: 'same' },
      ),
    },
    { label },
  );

/** How the boxes lie before the unit's openings. */
export const unitJoints = {
  supplyJoint: joint('From its supply opening to the duct'),
  returnJoint: joint('From its return opening to the duct'),
  headroom: optional(
    'Height there is where it and its boxes stand',
    6,
    'measured',
    'Clear, from what the unit stands on to the underside of rafters or ceiling, at the lowest place over a box.',
  ),
};
