import { choice, group, map, quantity, text } from './field.ts';

const length = (label: string, most: number, more: { help?: string; default?: number; optional?: boolean } = {}) =>
  quantity('length', {
    label,
    ...(more.help ? { help: more.help } : {}),
    ...(more.default === undefined ? { neededBy: more.optional ? [] : ['access'] } : { default: more.default }),
    plausible: { min: 0.05, max: most },
    possible: { min: 0 },
    usually: 'measured',
  });

const count = (label: string, likely: number, most: number, help?: string) =>
  quantity('count', {
    label,
    ...(help ? { help } : {}),
    default: likely,
    plausible: { min: 1, max: most },
    possible: { min: 1 },
    usually: 'estimated',
  });

/** Everything that boxes must pass on their way. */
export const passages = map(
  {
    name: text({ label: 'Name' }),
    kind: choice(
      { hatch: 'Hatch', door: 'Door', stair: 'Stair', crawl: 'Way along the attic' },
      { label: 'Kind', default: 'hatch' },
    ),
    carries: choice(
      { handler: 'The air handler', outdoor: 'The outdoor unit', both: 'Both' },
      { label: 'Passes it', default: 'handler' },
    ),
    width: length('Clear width', 3, { help: 'In the clear, at its narrowest: between trims, hinges, rails, trusses.' }),
    height: length('Clear height or length', 4),
    headroom: length('Headroom above', 4, { optional: true }),
    framing: length('Depth of the framing round it', 0.6, {
      help: 'Of a hatch: joists, trimmers and ceiling. 2x8 joists: 184 mm or 7 1/4 in.',
      default: 0.184,
    }),
    after: length('Width after its corner', 4, {
      help: 'Of a stair or way with a square corner. Left empty it is straight.',
      optional: true,
    }),
    length: length('Its length', 40, {
      help: 'Of a way along the attic: from the opening to the unit.',
      optional: true,
    }),
    floor: length('Width of the solid floor along it', 3, { optional: true }),
    ladder: length('A ladder that stays takes of its length', 1, {
      help: 'Of a hatch whose ladder or its frame cannot be taken out while the boxes go up.',
      default: 0,
    }),
    below: length('Ceiling above the floor below it', 6, {
      help: 'Of a hatch or stair: the height of the room from which the boxes come.',
      default: 2.4,
    }),
    roof: quantity('angle', {
      label: 'Slope of the roof above it',
      help: 'Of a hatch: 0 where what is above it is level. The headroom is then that over its lower edge.',
      default: 0,
      plausible: { min: 0, max: 70 },
      possible: { min: 0, max: 89 },
      usually: 'measured',
    }),
    rises: choice({ height: 'Along its length', width: 'Across it' }, { label: 'The roof rises', default: 'height' }),
    ridge: length('Underside of the ridge above the joists', 8, {
      help: 'Left empty, nothing is counted that is higher than over the upper edge of the hatch.',
      optional: true,
    }),
    rise: length('Rise of one step', 0.4, { help: 'Of a stair.', optional: true }),
    going: length('Going of one step', 0.6, { help: 'Of a stair: from nosing to nosing, level.', optional: true }),
    storey: length('From floor to floor', 6, { help: 'Of a stair: what the whole flight rises.', default: 2.7 }),
  },
  { label: 'Ways in', one: 'Passage', help: 'Everything the boxes must pass, measured in the clear.' },
);

const angle = (label: string, likely: number, most: number, help?: string) =>
  quantity('angle', {
    label,
    ...(help ? { help } : {}),
    default: likely,
    plausible: { min: 0, max: most },
    possible: { min: 0, max: 90 },
    usually: 'estimated',
  });

const lifting = group(
  {
    up: choice(
      {
        rope: 'Hoisted by rope and sheaves',
        hands: 'Handed up through the opening',
        ladder: 'Carried up a ladder',
        stair: 'Carried up a stair',
      },
      { label: 'How it goes up', default: 'rope' },
    ),
    by: choice(
      { hands: 'Lifted and carried by hand', trolley: 'Rolled on a trolley, lifted by nobody' },
      { label: 'On the ground it is', default: 'hands' },
    ),
    people: count('People who carry', 2, 6),
    pose: choice(
      { standing: 'On their feet', kneeling: 'On their knees', crawling: 'Crawling or lying' },
      {
        label: 'They lift',
        help: 'In most attics nobody stands: then no published limit covers it.',
        default: 'standing',
      },
    ),
    reach: length('Hands in front of the ankles', 1, {
      help: 'A box is held away from the body: half its depth and a hand.',
      default: 0.4,
    }),
    low: length('Hands above the floor where the lift begins', 1.75, { default: 0.3 }),
    travel: length('Height of the lift', 1.75, { default: 0.7 }),
    grip: choice(
      { good: 'Handles', fair: 'Edges to hold', poor: 'Smooth, limp or bulky' },
      { label: 'Grip', default: 'fair' },
    ),
    pulling: count('People who pull the rope', 2, 6, 'Standing aside, never under the load.'),
    parts: count('Parts of rope at the load', 4, 8),
    sheave: quantity('fraction', {
      label: 'Share of the pull a sheave passes on',
      help: 'Ball bearings 0.95 to 0.97, bushings 0.90 to 0.93, a rope over a carabiner 0.6 to 0.8.',
      default: { low: 0.88, likely: 0.92, high: 0.96 },
      plausible: { min: 0.5, max: 1 },
      possible: { min: 0.05, max: 1 },
      usually: 'estimated',
    }),
    lead: choice(
      { yes: 'Down, over one more sheave', no: 'Up, from the load' },
      { label: 'The rope is pulled', default: 'yes' },
    ),
    aside: angle(
      'The rope’s end is pulled aside from straight down by',
      20,
      80,
      'Who pulls stands aside, so the anchor is pulled that way too.',
    ),
    stairSlope: angle('Slope of the stair', 37, 60, 'Rise and going of 190 and 250 mm, 7 1/2 and 10 in: 37°.'),
    ladder: quantity('mass', {
      label: 'Load the ladder is made for',
      help: 'On its label. Person, clothes, tools and load count together.',
      neededBy: ['access'],
      plausible: { min: 75, max: 200 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    tools: quantity('mass', {
      label: 'Clothes and tools that one person wears',
      default: 8,
      plausible: { min: 0, max: 40 },
      possible: { min: 0 },
      usually: 'estimated',
    }),
    anchor: quantity('mass', {
      label: 'Load at which what it hangs from gives way, as a mass',
      help: 'The weakest of beam, strap and sheave, by their sheets: breaking load, not working load.',
      neededBy: ['access'],
      plausible: { min: 50, max: 10_000 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
  },
  { label: 'Lifting' },
);

const pressure = (label: string, likely: number, help: string) =>
  quantity('pressure', {
    label,
    help,
    default: likely,
    plausible: { min: 0, max: 3000 },
    possible: { min: 0 },
    usually: 'assumed',
  });

/** m of what is thin: panels, and what pads give. */
const thin = (label: string, likely: number, help: string) =>
  quantity('length', {
    label,
    help,
    default: likely,
    plausible: { min: 0, max: 0.06 },
    possible: { min: 0 },
    usually: 'nameplate',
  });

const platform = group(
  {
    joist: choice(
      { '2x4': '2x4', '2x6': '2x6', '2x8': '2x8', '2x10': '2x10', '2x12': '2x12' },
      { label: 'Joists under the unit', neededBy: ['access'] },
    ),
    span: length('Their span', 8, { help: 'Clear, from bearing to bearing.' }),
    spacing: length('From joist to joist', 1.3, { default: 0.4064 }),
    from: length('The unit stands from their nearer bearing', 4, {
      help: 'Left empty it stands over their middle, where it is worst.',
      optional: true,
    }),
    timber: choice(
      { unknown: 'Not known', spruce: 'Spruce, pine or fir', larch: 'Douglas fir or larch' },
      { label: 'Timber', default: 'unknown' },
    ),
    joists: count('Joists that carry the unit', 2, 5, 'A platform across more of them shares its load.'),
    live: pressure(
      'Load of use to allow for',
      480,
      'Attic without storage 0.48 kPa or 10 psf, with some storage twice that.',
    ),
    dead: pressure('Own weight of ceiling and floor', 480, '0.48 kPa or 10 psf is usual for plaster or board.'),
    person: quantity('mass', {
      label: 'Person kneeling beside it',
      default: 100,
      plausible: { min: 40, max: 200 },
      possible: { min: 0 },
      usually: 'estimated',
    }),
    sheet: thin(
      'Thickness of panels laid over the joists',
      0,
      'Their own weight then counts: 18 mm or 23/32 in of plywood. Where the floor round the unit is not fixed yet, they are bought.',
    ),
    floor: choice(
      { boards: 'Boards 2x6, laid flat', panels: 'Panels, 18 mm or 23/32 in where no thickness is entered above' },
      { label: 'New floor is made of', default: 'boards' },
    ),
    cross: choice(
      {
        none: 'None: it stands on the joists or panels',
        'flat-2x4': '2x4, laid flat',
        'flat-2x6': '2x6, laid flat',
        'edge-2x4': '2x4, on edge',
        'edge-2x6': '2x6, on edge',
      },
      { label: 'Timbers across the joists under the unit', default: 'none' },
    ),
    crossing: count('How many of them', 2, 6),
    isolation: choice(
      { none: 'Nothing', pads: 'Rubber pads or mounts', springs: 'Springs, under it or in its straps' },
      { label: 'Between the unit and the wood', default: 'none' },
    ),
    gives: thin(
      'They give under its weight',
      0.004,
      'By their sheet, at the load of one quarter of the unit: pads 2 to 5 mm, springs 10 to 25 mm.',
    ),
    turns: quantity('number', {
      label: 'Turns of the blower in a minute',
      default: { low: 500, likely: 800, high: 1100 },
      plausible: { min: 150, max: 3600 },
      possible: { min: 1 },
      usually: 'estimated',
    }),
    deck: choice(
      { yes: 'Panels or boards, fixed', loose: 'Loose boards', none: 'Nothing yet' },
      { label: 'Floor round the unit', neededBy: ['access'] },
    ),
  },
  { label: 'Platform' },
);

/** How the outdoor unit comes onto its bracket or stand. */
const outdoor = group(
  {
    up: choice(
      {
        ground: 'It stays near the ground: nothing to raise',
        ramp: 'Drawn up a ramp of planks by a rope',
        rope: 'Hoisted straight up by a rope',
        hands: 'Lifted onto it by hand',
      },
      { label: 'How it goes up', default: 'ground' },
    ),
    slope: angle('Slope of the ramp', 30, 60),
    friction: quantity('fraction', {
      label: 'Friction of the unit on the ramp, as a share of its weight',
      help: 'Crate on planks 0.3 to 0.5, on wet or icy wood 0.1 to 0.2, on a trolley or rollers 0.03 to 0.1.',
      default: { low: 0.2, likely: 0.35, high: 0.5 },
      plausible: { min: 0, max: 1 },
      possible: { min: 0 },
      usually: 'estimated',
    }),
    parts: count('Parts of rope at the load', 3, 8),
    pulling: count('People who pull the rope', 2, 6, 'Beside or above it, never below.'),
    anchor: quantity('mass', {
      label: 'Load at which its anchor gives way, as a mass',
      help: 'Against the pull’s own direction: a post, a tree, a beam; not a gutter, a rail or siding.',
      neededBy: ['access'],
      plausible: { min: 50, max: 10_000 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
  },
  { label: 'Raising the outdoor unit' },
);

const service = group(
  {
    depth: length('Free space in front of the unit: depth', 4),
    width: length('and width', 4),
    light: choice(
      { yes: 'A light, switched at the opening', no: 'None' },
      { label: 'Light at the unit', neededBy: ['access'] },
    ),
    receptacle: choice({ yes: 'Yes', no: 'None' }, { label: 'Receptacle near the unit', neededBy: ['access'] }),
  },
  { label: 'Service afterwards' },
);

const heat = group(
  {
    time: choice(
      { any: 'At any hour', dawn: 'At dawn, done before the sun is on the roof', cold: 'In the cold season only' },
      { label: 'Work in the attic', default: 'any' },
    ),
    effort: choice(
      { light: 'Light', moderate: 'Moderate: crawling, screwing, pulling duct', heavy: 'Heavy: sawing, hauling' },
      { label: 'Effort', default: 'moderate' },
    ),
    used: choice({ no: 'No', yes: 'Yes: two weeks of daily work in heat' }, { label: 'Used to heat', default: 'no' }),
    clothes: choice(
      {
        woven: 'Woven work clothes or coverall',
        paper: 'Throw-away coverall',
        double: 'Two layers',
        sealed: 'Vapour-tight',
      },
      { label: 'Clothes', default: 'woven' },
    ),
  },
  { label: 'Working heat' },
);

/** How things are lifted, carried and stood, and how people work up there. */
export const access = group({ lifting, outdoor, platform, service, heat }, { label: 'Lifting, platform, heat' });
