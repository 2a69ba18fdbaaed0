import { choice, group, map, quantity, reference, text } from './field.ts';
import { indoor, placeInside } from './linesetInside.ts';
import { ends, ground, spare } from './linesetOutside.ts';

const measured = (label: string, most: number, help?: string) =>
  quantity('length', {
    label,
    ...(help ? { help } : {}),
    neededBy: ['lineset'],
    plausible: { min: 0.01, max: most },
    possible: { min: 0 },
    usually: 'measured',
  });
const optional = (label: string, most: number, help?: string) =>
  quantity('length', {
    label,
    ...(help ? { help } : {}),
    neededBy: [],
    plausible: { min: 0, max: most },
    possible: { min: 0 },
    usually: 'measured',
  });
const usual = (
  label: string,
  value: number | { low: number; likely: number; high: number },
  most: number,
  help?: string,
) =>
  quantity('length', {
    label,
    ...(help ? { help } : {}),
    default: value,
    plausible: { min: 0, max: most },
    possible: { min: 0 },
    usually: 'nameplate',
  });

const obstacles = map(
  {
    name: text({ label: 'Name' }),
    kind: choice(
      {
        window: 'Window',
        bedroom: 'Window somebody sleeps behind',
        door: 'Door',
        other: 'Meter, tap, chimney, bush',
      },
      { label: 'Kind', default: 'window' },
    ),
    x: measured('From the left end', 30),
    z: measured('Its lower edge above the ground', 12),
    width: measured('Width', 10),
    height: measured('Height', 6),
  },
  { label: 'What is on it', one: 'Thing on the wall' },
);

const walls = map(
  {
    name: text({ label: 'Name' }),
    width: measured('Width', 30),
    height: measured('Height from the ground', 12),
    outX: measured('The line comes out: from the left end', 30, 'Seen from outside.'),
    outZ: measured('and above the ground', 12),
    inside: measured(
      'Line from the air handler to there',
      30,
      'Along its way, straight stretches added, as it will be laid. Left empty it is the shortest way through the house as you describe it below.',
    ),
    thickness: usual('Through the wall', 0.15, 1, 'Added where the way inside is worked out; a measured one holds it.'),
    hole: placeInside(
      'Inner end of its hole, in the house',
      'From the same corner as the air handler’s pipes. Only where the way inside is to be worked out.',
    ),
    eave: choice(
      { gable: 'No eave: a gable', gutter: 'An eave with a gutter', drips: 'An eave that drips or slides' },
      { label: 'Above it is', default: 'gutter' },
    ),
    obstacles,
    ground,
  },
  {
    label: 'Walls where the outdoor unit may hang or stand',
    one: 'Wall',
    help: 'Each seen from outside, measured from its lower left corner at the ground.',
  },
);

/** Line sets for sale, the walls they may lead to, and where the outdoor unit is to be. */
export const lineset = group(
  {
    stock: map({ length: measured('Length', 60) }, { label: 'Line sets for sale', one: 'Line set' }),
    walls,
    place: group(
      {
        wall: reference('routes.lineset.walls', { label: 'Wall of the outdoor unit', neededBy: ['lineset'] }),
        x: measured('Left edge of the outdoor unit, from the wall’s left end', 30),
        z: measured('Base of the outdoor unit above the ground', 10),
        stands: choice(
          { wall: 'Hung on the wall', ground: 'On a stand on the ground before it' },
          { label: 'The outdoor unit is', default: 'wall' },
        ),
        out: usual('Back of the unit from the wall', 0.3, 20, 'Only where it stands on the ground.'),
      },
      { label: 'Where the outdoor unit is to be' },
    ),
    run: optional('Length of the line', 60, 'Only where no place on a wall is given: the whole way between the units.'),
    rise: optional('Height between the two units', 30),
    slack: usual(
      'Spare to have in hand',
      { low: 0.2, likely: 0.4, high: 0.8 },
      3,
      'For bends that do not fall where they were drawn, and for the last stretch at each unit.',
    ),
    bend: usual('Tightest bend, radius of its middle line', 0.15, 0.5, 'Insulated sets bent by hand: 150 mm or 6 in.'),
    ...ends,
    spare,
    indoor,
    liftMost: usual(
      'Highest base that can be lifted to, cleaned and reached',
      1.8,
      6,
      'By two people on firm ground with tied ladders. Higher wants a hoist and a scaffold, and somebody to climb it each year.',
    ),
    footing: usual('Firm ground wanted before it', 0.8, 3, 'Where people stand who lift, clean and mend it.'),
    clearBeside: usual('Free beside the unit', 0.25, 2, 'The data sheet decides.'),
    clearAbove: usual('Free above it', 0.5, 2, 'The data sheet decides.'),
    cover: choice(
      { clips: 'Clips', channel: 'A channel with a cover' },
      {
        label: 'Outside it is held by',
        help: 'A channel is cut from lengths along the way that is drawn on the wall.',
        default: 'clips',
      },
    ),
    channel: usual('Length in which such a channel is sold', 1.9812, 6, '6 1/2 ft or 2 m.'),
    hold: group(
      {
        wind: quantity('velocity', {
          label: 'Strongest gust to stand',
          help: 'The design wind of the local code, three-second gust.',
          neededBy: ['lineset'],
          plausible: { min: 15, max: 90 },
          possible: { min: 0 },
          usually: 'estimated',
        }),
        land: choice(
          { town: 'Among houses or trees', open: 'Open land', shore: 'On the shore' },
          { label: 'The house stands', default: 'open' },
        ),
        out: usual('From the wall to the middle of the unit', 0.3, 1),
        apart: usual('From the upper bolts to the lower ones', 0.35, 1.5),
        backing: choice(
          { none: 'Nothing: it is fixed to the wall itself', panel: 'A panel across the studs' },
          {
            label: 'Behind the bracket',
            help: 'Where studs do not stand as far apart as the bracket’s arms. Not over siding: on the sheathing, and flashed.',
            default: 'none',
          },
        ),
        ice: quantity('mass', {
          label: 'Ice on it',
          default: { low: 0, likely: 10, high: 20 },
          plausible: { min: 0, max: 80 },
          possible: { min: 0 },
          usually: 'estimated',
        }),
        anchor: quantity('mass', {
          label: 'Pull at which one anchor gives way, as a mass',
          help: 'The ultimate pull by the anchor’s sheet in that wall, as pounds or kilograms. A quarter of it is counted on.',
          neededBy: ['lineset'],
          plausible: { min: 50, max: 5000 },
          possible: { min: 0 },
          usually: 'nameplate',
        }),
      },
      { label: 'Bracket on the wall', help: 'Only where the unit hangs.' },
    ),
    snow: quantity('length', {
      label: 'Snow to allow for',
      default: { low: 0.1, likely: 0.3, high: 0.9 },
      plausible: { min: 0, max: 4 },
      possible: { min: 0 },
      usually: 'estimated',
    }),
  },
  { label: 'Line set' },
);
