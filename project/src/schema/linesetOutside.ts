import { choice, group, map, quantity, text } from './field.ts';

const optional = (label: string, most: number, help?: string) =>
  quantity('length', {
    label,
    ...(help ? { help } : {}),
    neededBy: [],
    plausible: { min: 0, max: most },
    possible: { min: 0 },
    usually: 'measured',
  });
const sound = (label: string, help: string) =>
  quantity('sound-level', { label, help, neededBy: [], plausible: { min: 25, max: 70 }, usually: 'nameplate' });

const things = map(
  {
    name: text({ label: 'Name' }),
    kind: choice(
      {
        walk: 'Walk, drive, terrace',
        step: 'Step or stair',
        soft: 'Bed, bush, slope, water: nobody stands there',
        other: 'Tank, post, wood pile, well',
      },
      { label: 'Kind', default: 'walk' },
    ),
    x: optional('From the wall’s left end', 30),
    out: optional('Its near edge, from the wall', 30),
    width: optional('Width, along the wall', 30),
    depth: optional('Depth, away from it', 30),
  },
  { label: 'What is on the ground', one: 'Thing on the ground' },
);

/** The ground before a wall, out to the neighbour. */
export const ground = group(
  {
    depth: optional(
      'Ground that a unit may stand on, out from the wall',
      30,
      'Left empty no place on it is looked for.',
    ),
    things,
    line: optional('Property line, from the wall', 100),
    lineLeast: optional('Least from the unit to that line', 30, 'By the local ordinance.'),
    lineSound: sound('Sound allowed at that line', 'By the local ordinance, at night.'),
    neighbour: group(
      {
        x: quantity('length', {
          label: 'From the wall’s left end',
          help: 'Below 0 where it lies farther left.',
          neededBy: [],
          plausible: { min: -60, max: 90 },
          usually: 'measured',
        }),
        out: optional('From the wall', 100),
        z: optional('Its middle above the ground', 12),
      },
      { label: 'The neighbour’s nearest window' },
    ),
    fence: group(
      {
        out: optional('From the wall', 100),
        top: optional('Its top above the ground', 6),
      },
      { label: 'A solid fence or bank between', help: 'Along the wall, without gaps. Boards with gaps do nothing.' },
    ),
    mirror: quantity('length', {
      label: 'A second wall that throws the sound back, from the left end',
      help: 'Standing square to this one: a corner, a shed, the next house. Below 0 where it lies to the left.',
      neededBy: [],
      plausible: { min: -30, max: 60 },
      usually: 'measured',
    }),
  },
  { label: 'The ground before it' },
);

/** Couplings, hole, and room at each end. */
export const ends = {
  ends: choice(
    {
      once: 'Filled at the factory, couplings for one use',
      flare: 'Flares or couplings that may be opened again',
    },
    { label: 'The set is', default: 'once' },
  ),
  coupling: optional('Widest coupling, across, with its cap', 0.2),
  lineWide: quantity('length', {
    label: 'The other line beside it, across, with its insulation',
    default: 0.045,
    plausible: { min: 0.01, max: 0.15 },
    possible: { min: 0 },
    usually: 'nameplate',
  }),
  sleeve: optional('Sleeve in the wall, inside across', 0.4),
  spannerHandler: optional('Free beside the couplings at the air handler', 3, 'For two spanners against each other.'),
  spannerOutdoor: optional('Free beside the couplings at the outdoor unit', 3),
  straightHandler: optional('Straight on from the air handler’s couplings to whatever is in the way', 10),
  straightOutdoor: optional('Straight on from the outdoor unit’s couplings to whatever is in the way', 10),
};

export const spare = group(
  {
    where: choice(
      { attic: 'On the attic floor', behind: 'On the ground behind the unit', wall: 'Flat under a cover on the wall' },
      { label: 'It lies', default: 'attic' },
    ),
    width: optional('Room for it, one way', 10),
    depth: optional('Room for it, the other way', 10),
  },
  { label: 'Where the spare length lies', help: 'As one flat loop. Never as a tight upright coil.' },
);
