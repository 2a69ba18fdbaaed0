import { map, quantity, reference, text } from './field.ts';

/** Whatever blows air out of the house: it draws in through every leak, and down a flue. */
export const exhaust = map(
  {
    name: text({ label: 'Name' }),
    room: reference('house.rooms', {
      label: 'In',
      help: 'Left empty it counts to the part of the house that is open to the hall.',
    }),
    flow: quantity('flow', {
      label: 'Air it blows out',
      help: 'As installed. A bath fan moves about 50 cfm, a dryer 150, a range hood 100 to 400. Left empty it counts as off.',
      default: 0,
      plausible: { min: 0, max: 0.6 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
  },
  {
    label: 'Exhaust fans and dryer',
    one: 'Exhaust',
    help: 'Counted all at once beside the blower where a flue is open to the rooms. None entered counts as off.',
  },
);
