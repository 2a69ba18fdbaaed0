import { choice, group, quantity } from './field.ts';

const length = (label: string, help: string, least: number, most: number) =>
  quantity('length', {
    label,
    help,
    neededBy: ['condensate'],
    plausible: { min: least, max: most },
    possible: { min: 0 },
    usually: 'measured',
  });

/** The pan under the unit, measured inside. */
const pan = group(
  {
    length: length('Length inside', 'Along the unit.', 0.3, 3),
    width: length('Width inside', 'Across the unit.', 0.2, 2),
    depth: length('Depth', 'From its floor to its lowest rim.', 0.01, 0.2),
    tilt: quantity('number', {
      label: 'Out of level',
      help: 'Along its length: 0.01 is 10 mm in a metre.',
      default: { low: 0, likely: 0.003, high: 0.01 },
      plausible: { min: 0, max: 0.05 },
      possible: { min: 0, max: 1 },
      usually: 'estimated',
    }),
  },
  { label: 'Pan under the unit', help: 'Only where there is one.' },
);

/** How water leaves the coil, and what happens when it cannot. */
export const drain = group(
  {
    run: length('Length of the drain', 'From the trap to where it ends, as the pipe really goes.', 0.01, 30),
    fall: quantity('length', {
      label: 'Height to lose along it',
      help: 'From the trap’s outlet to the end of the pipe.',
      neededBy: ['condensate'],
      plausible: { min: 0.02, max: 5 },
      possible: { min: 0 },
      usually: 'measured',
    }),
    below: length(
      'Free height below the drain outlet',
      'From the underside of the cabinet’s drain outlet down to whatever is there: platform, joist, insulation. Risers add to it.',
      0.01,
      2,
    ),
    size: quantity('length', {
      label: 'Inner diameter of the pipe',
      help: 'Three-quarter-inch plastic pipe measures 20.9 mm inside, 13/16 in.',
      default: 0.0209,
      plausible: { min: 0.008, max: 0.06 },
      possible: { min: 0.001 },
      usually: 'nameplate',
    }),
    blower: choice(
      { after: 'After the coil: it pulls air through it', before: 'Before the coil: it pushes air through it' },
      {
        label: 'The blower stands',
        help: 'Most air handlers pull: the drain then leaves where the cabinet sucks.',
        default: 'after',
      },
    ),
    coil: quantity('pressure', {
      label: 'Air pressure that the wet coil takes',
      help: 'Inside the cabinet; data sheets of coils state it.',
      default: { low: 40, likely: 75, high: 125 },
      plausible: { min: 5, max: 200 },
      possible: { min: 0 },
      usually: 'assumed',
    }),
    vent: choice(
      { after: 'After the trap', before: 'Between cabinet and trap', none: 'There is none' },
      { label: 'Open vent of the drain', neededBy: ['condensate'] },
    ),
    second: choice(
      {
        pan: 'A pan under the unit, its own drain ending where it is seen',
        overflow: 'A second, higher outlet of the unit’s own pan, its line ending where it is seen',
        switch: 'A float switch that stops the unit',
        none: 'Nothing yet',
      },
      { label: 'When the drain stops', neededBy: ['condensate'] },
    ),
    pan,
    place: choice(
      { inside: 'Inside the house', attic: 'In the attic', below: 'Below the floor', outdoors: 'Outdoors' },
      { label: 'Coldest stretch of trap and drain', default: 'attic' },
    ),
    insulation: quantity('length', {
      label: 'Foam round trap and drain',
      default: 0,
      plausible: { min: 0, max: 0.06 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    heated: choice({ yes: 'Yes', no: 'No' }, { label: 'Heated by a cable, or drained every autumn', default: 'no' }),
    ends: choice(
      {
        ground: 'Outdoors, on ground that takes the water',
        gap: 'Over a sink, floor drain or standpipe, with an air gap',
        waste: 'Joined to a waste pipe',
        walked: 'On a path, a roof or next door',
      },
      { label: 'Where the drain ends', neededBy: ['condensate'] },
    ),
  },
  {
    label: 'Condensate drain',
    help: 'Litres of water leave the coil in an hour of muggy weather, above a finished ceiling.',
  },
);
