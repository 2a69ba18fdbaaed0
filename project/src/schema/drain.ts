import { choice, group, map, quantity, text } from './field.ts';

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

const places = {
  inside: 'Inside the house',
  attic: 'In the attic',
  below: 'Below the floor',
  outdoors: 'Outdoors',
} as const;

const lineEnds = (label: string) =>
  choice(
    {
      seen: 'Outdoors in plain sight: over a window or a door',
      hidden: 'Outdoors where nobody looks',
      joined: 'Joined to the first drain',
      none: 'It has no line',
    },
    {
      label,
      help: 'Water from it is the only sign that the first drain has stopped.',
      neededBy: ['condensate'],
    },
  );

/** One stretch of the drain, in order from the trap to its end. */
const stretches = map(
  {
    name: text({ label: 'Name' }),
    place: choice(places, { label: 'It runs', default: 'attic' }),
    run: length('Length', 'As the pipe goes.', 0.01, 30),
    fall: quantity('length', {
      label: 'Height it loses',
      help: 'From its beginning to its end.',
      neededBy: ['condensate'],
      plausible: { min: 0, max: 5 },
      possible: { min: 0 },
      usually: 'measured',
    }),
    insulation: quantity('length', {
      label: 'Foam round it',
      default: 0,
      plausible: { min: 0, max: 0.06 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
  },
  {
    label: 'The drain, stretch by stretch',
    one: 'Stretch',
    help: 'From the trap to its end, in order; a stretch ends where place or slope changes. Empty: it counts as one.',
  },
);

/** The line of the second outlet, or of the pan. */
const secondLine = group(
  {
    above: length('Second outlet above the first', 'From underside to underside, at the unit’s own pan.', 0.001, 0.2),
    run: length('Length of the second line', 'From the second outlet, or from the pan, to its end.', 0.01, 30),
    fall: quantity('length', {
      label: 'Height it loses',
      neededBy: ['condensate'],
      plausible: { min: 0.02, max: 5 },
      possible: { min: 0 },
      usually: 'measured',
    }),
    ends: lineEnds('The second line ends'),
  },
  { label: 'Second line', help: 'Of a second outlet, or of the pan under the unit.' },
);

/** A pump for water that cannot fall. */
const pump = group(
  {
    used: choice({ no: 'No', yes: 'Yes' }, { label: 'A pump lifts the water', default: 'no' }),
    lift: length('Height it has to lift', 'From the water in its box to the highest point of its tube.', 0.1, 8),
    tube: quantity('length', {
      label: 'Inner diameter of its tube',
      default: 0.0095,
      plausible: { min: 0.004, max: 0.02 },
      possible: { min: 0.001 },
      usually: 'nameplate',
    }),
    tubeRun: length('Length of its tube', 'From the pump to where it ends or begins to fall.', 0.2, 40),
    headMost: length('Height at which it lifts no more', 'From its sheet.', 0.3, 15),
    flowMost: quantity('volume', {
      label: 'Water in an hour without height',
      help: 'From its sheet.',
      neededBy: ['condensate'],
      plausible: { min: 0.004, max: 2 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    power: quantity('electric-power', {
      label: 'It draws',
      default: { low: 15, likely: 40, high: 120 },
      plausible: { min: 2, max: 500 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    alarm: choice(
      { stops: 'A high-water switch stops the unit', sounds: 'It only sounds', none: 'Nothing' },
      { label: 'When the pump fails', neededBy: ['condensate'] },
    ),
  },
  { label: 'Pump', help: 'Only where the water cannot fall all the way by itself.' },
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
    risers: quantity('length', {
      label: 'Height of the risers under the unit',
      help: 'From the floor of the pan, or the platform where there is none, to the underside of the unit.',
      neededBy: ['condensate'],
      plausible: { min: 0.01, max: 0.6 },
      possible: { min: 0 },
      usually: 'measured',
    }),
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
    ventTop: quantity('length', {
      label: 'Top of the vent above the rim of the unit’s own pan',
      help: 'Below the rim, a minus before it, a stopped drain runs out of the vent onto the ceiling.',
      neededBy: ['condensate'],
      plausible: { min: -0.2, max: 1 },
      usually: 'measured',
    }),
    second: choice(
      {
        pan: 'A pan under the unit, its own drain ending where it is seen',
        overflow: 'A second, higher outlet of the unit’s own pan, its line ending where it is seen',
        switch: 'A float switch that stops the unit',
        none: 'Nothing yet',
      },
      { label: 'When the drain stops', neededBy: ['condensate'] },
    ),
    secondLine,
    pan,
    float: choice(
      { yes: 'Yes, it stops the unit', no: 'No' },
      { label: 'Float switch in the pan or at the second outlet', default: 'no' },
    ),
    stretches,
    pump,
    place: choice(places, { label: 'Coldest stretch of trap and drain', default: 'attic' }),
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
