import { choice, map, quantity, reference, text } from './field.ts';

/** Places in a room where people lie and sit still. */
export const rest = map(
  {
    name: text({ label: 'Name' }),
    kind: choice({ bed: 'Bed', cot: 'Cot', sofa: 'Sofa or chair' }, { label: 'It is a', default: 'bed' }),
    register: reference('routes.ducts.terminals', {
      label: 'Nearest register',
      help: 'Left empty every register of the room is taken to be so far from it.',
    }),
    distance: quantity('length', {
      label: 'From that register',
      help: 'Along the floor, from below or before the register to the nearest head or pillow.',
      neededBy: ['air'],
      plausible: { min: 0, max: 12 },
      possible: { min: 0 },
      usually: 'measured',
    }),
    height: quantity('length', {
      label: 'Height of the head',
      help: 'Above the floor. Left empty: 0.6 m (2 ft) lying, 1.1 m (3 ft 7 in) sitting.',
      neededBy: [],
      plausible: { min: 0.1, max: 2.2 },
      possible: { min: 0 },
      usually: 'measured',
    }),
  },
  {
    label: 'Beds, cots and sofas',
    one: 'Place to rest',
    help: 'Where people lie and sit still: there a draught is felt first.',
  },
);
