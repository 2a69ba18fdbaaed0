import { access, passages } from './access.ts';
import { drain } from './drain.ts';
import { ductCutting, takeOff } from './ductCutting.ts';
import { cutReducer, ductEnds } from './ductEnds.ts';
import { ductKinds, ductMake, mayBe, spaceToPass } from './ductSize.ts';
import { choice, group, map, quantity, reference, text, way } from './field.ts';
import { lineset } from './lineset.ts';
import { unitJoints } from './unitOpenings.ts';
import { wires } from './wires.ts';

const measuredLength = (label: string, neededBy: ['air'] | ['access'], most: number) =>
  quantity('length', {
    label,
    neededBy,
    plausible: { min: 0.01, max: most },
    possible: { min: 0 },
    usually: 'measured',
  });
const optionalLength = (label: string, most: number, help?: string) =>
  quantity('length', {
    label,
    ...(help ? { help } : {}),
    neededBy: [],
    plausible: { min: 0.02, max: most },
    possible: { min: 0 },
    usually: 'measured',
  });

/** A place in the house; the corner from which all places are measured is the person's own choice. */
const placeAt = (label: string, help: string) => {
  const along = (axis: string) =>
    quantity('length', { label: axis, neededBy: [], plausible: { min: -60, max: 60 }, usually: 'measured' });
  return group({ x: along('Across the plan'), y: along('Up the plan'), z: along('Above the floor') }, { label, help });
};

const fittings = map(
  {
    kind: choice(
      {
        'elbow-round': 'Round elbow',
        'elbow-round-tight': 'Round elbow, tight',
        'elbow-rectangular': 'Rectangular elbow, square corner',
        'elbow-rectangular-vaned': 'Rectangular elbow with vanes',
        'bend-flexible': 'Bend in flexible duct',
        collar: 'Straight collar off a plenum',
        'collar-rounded': 'Rounded collar off a plenum',
        'tee-branch': 'Branch of a tee',
        'tee-straight': 'Straight through a tee',
        reducer: 'Reducer',
        damper: 'Damper, open',
        'boot-elbow': 'Boot that turns',
        'boot-straight': 'Straight boot',
        entry: 'Plain opening in a wall or box',
      },
      { label: 'Fitting', default: 'elbow-round' },
    ),
    count: quantity('count', {
      label: 'How many',
      default: 1,
      plausible: { min: 0, max: 12 },
      possible: { min: 0 },
      usually: 'measured',
    }),
    radius: quantity('number', {
      label: 'Radius of the bend over the diameter',
      help: 'Along the middle of the bend; over the width of a rectangular one. Left empty: 1 for a usual elbow, 0.5 for a tight one, a square corner for a rectangular one.',
      neededBy: [],
      plausible: { min: 0.5, max: 2.5 },
      possible: { min: 0 },
      usually: 'measured',
    }),
    angle: quantity('angle', {
      label: 'Angle',
      help: 'How far a bend turns, or how far a damper is turned from open. Left empty: a bend of 90°, a damper that is open.',
      neededBy: [],
      plausible: { min: 0, max: 180 },
      possible: { min: 0, max: 180 },
      usually: 'measured',
    }),
    reducer: cutReducer,
  },
  { label: 'Fittings', one: 'Fitting' },
);

const sections = map(
  {
    name: text({ label: 'Name' }),
    side: choice({ supply: 'Supply', return: 'Return' }, { label: 'Side', default: 'supply' }),
    from: reference('routes.ducts.sections', {
      label: 'Joins',
      help: 'The section nearer the air handler; empty where it joins the air handler itself.',
    }),
    kind: choice(ductKinds, { label: 'Made of', default: 'flexible' }),
    already: choice(
      {
        new: 'To be made',
        kept: 'There already, kept as it is',
        patched: 'There already, kept, its joints to be sealed',
        replaced: 'There already, taken out and made new',
      },
      {
        label: 'It is',
        help: 'What is there is neither bought nor cut; its size is judged like any other.',
        default: 'new',
      },
    ),
    hung: choice(
      { yes: 'They are there', no: 'They are missing: to be bought and hung' },
      { label: 'Its hangers', help: 'Of a duct that is there already and stays.', default: 'yes' },
    ),
    diameter: optionalLength('Diameter', 0.8, 'Inside. Give it, or width and height.'),
    width: optionalLength('Width inside', 1.5),
    height: optionalLength('Height inside', 1.5),
    length: measuredLength('Length as installed', ['air'], 40),
    points: way({
      label: 'Way in plan',
      help: 'From the end nearer the air handler outward, measured from one corner of the house: across, up, and above the floor. The drawing follows it; the length beside it is what counts.',
    }),
    compression: quantity('fraction', {
      label: 'Slack left in flexible duct',
      help: 'Pulled as tight as it goes 0.04; as often seen 0.15; laid in loops 0.30.',
      default: { low: 0.04, likely: 0.12, high: 0.3 },
      plausible: { min: 0, max: 0.45 },
      possible: { min: 0, max: 0.9 },
      usually: 'assumed',
    }),
    supports: quantity('length', {
      label: 'Between its hangers',
      help: 'Of flexible duct lying level, from saddle to saddle. A collar counts as one.',
      default: 1.2192,
      plausible: { min: 0.3, max: 3.1 },
      possible: { min: 0.05 },
      usually: 'measured',
    }),
    sag: quantity('length', {
      label: 'Sag between them',
      help: 'How far its middle hangs below a line from saddle to saddle. It costs pressure; left empty the run counts as hung straight.',
      neededBy: [],
      plausible: { min: 0, max: 0.3 },
      possible: { min: 0 },
      usually: 'measured',
    }),
    insulation: quantity('r-value', {
      label: 'Insulation round it',
      default: { low: 0.74, likely: 1.06, high: 1.41 },
      plausible: { min: 0, max: 6 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    leakage: quantity('fraction', {
      label: 'Air leaking from it',
      help: 'Share of what it carries. Every joint sealed 0.02; old ducts 0.1 and more.',
      default: { low: 0.01, likely: 0.03, high: 0.1 },
      plausible: { min: 0, max: 0.5 },
      possible: { min: 0, max: 0.9 },
      usually: 'assumed',
    }),
    place: choice(
      { attic: 'In the attic', below: 'Under the floor', inside: 'Inside the heated rooms' },
      { label: 'Runs', default: 'attic' },
    ),
    fittings,
    space: spaceToPass,
    mayBe,
    takeOff,
    ends: ductEnds,
  },
  { label: 'Duct sections', one: 'Section' },
);

const terminals = map(
  {
    name: text({ label: 'Name' }),
    section: reference('routes.ducts.sections', { label: 'At the end of', neededBy: ['air'] }),
    room: reference('house.rooms', { label: 'In', neededBy: ['air'] }),
    already: choice({ new: 'To be bought', kept: 'There already, kept' }, { label: 'It is', default: 'new' }),
    width: measuredLength('Width of the face', ['air'], 1.5),
    height: measuredLength('Height of the face', ['air'], 1.5),
    freeShare: quantity('fraction', {
      label: 'Open share of the face',
      default: { low: 0.6, likely: 0.7, high: 0.8 },
      plausible: { min: 0.3, max: 1 },
      possible: { min: 0.01, max: 1 },
      usually: 'assumed',
    }),
    place: choice(
      {
        ceiling: 'In the ceiling',
        high: 'In a wall, near the ceiling',
        low: 'In a wall, near the floor',
        floor: 'In the floor',
      },
      { label: 'It sits', default: 'ceiling' },
    ),
    blows: choice(
      {
        straight: 'One way: along the ceiling, or straight off the wall or floor',
        fanned: 'Fanned out to several sides',
        round: 'All round along the ceiling',
        down: 'Straight down into the room',
      },
      { label: 'It blows', help: 'Look along the blades. A return grille does not blow.', default: 'straight' },
    ),
    at: placeAt(
      'Its place in plan',
      'Its middle, from the same corner as the ducts. Left empty it is the end of its duct.',
    ),
    distance: quantity('length', {
      label: 'From it to the wall it blows at',
      help: 'Left empty it is taken from the size of the room.',
      neededBy: [],
      plausible: { min: 0.5, max: 15 },
      possible: { min: 0.05 },
      usually: 'measured',
    }),
    pressure: quantity('pressure', {
      label: 'Pressure it takes',
      help: 'At the flow beside it, from its sheet. Left empty it is estimated from the open area.',
      neededBy: [],
      plausible: { min: 0, max: 60 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    pressureFlow: quantity('flow', {
      label: 'at a flow of',
      neededBy: [],
      plausible: { min: 0.005, max: 1 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    sound: quantity('noise-criterion', {
      label: 'Sound at that flow',
      help: 'The noise criterion its sheet states. Left empty it is worked out from its face and pressure.',
      neededBy: [],
      plausible: { min: 5, max: 60 },
      usually: 'nameplate',
    }),
  },
  { label: 'Registers and grilles', one: 'Register' },
);

const filter = group(
  {
    width: measuredLength('Width', ['air'], 1.2),
    height: measuredLength('Height', ['air'], 1.2),
    pressure: quantity('pressure', {
      label: 'Pressure it takes, clean',
      default: { low: 25, likely: 45, high: 75 },
      plausible: { min: 0, max: 150 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    pressureVelocity: quantity('velocity', {
      label: 'at an air speed of',
      default: 1.524,
      plausible: { min: 0.3, max: 3 },
      possible: { min: 0.01 },
      usually: 'nameplate',
    }),
    growth: quantity('number', {
      label: 'How its pressure grows with air speed',
      help: 'The power: 1 grows in step, 2 with the square. Two rows of its sheet give it; filters usually lie between 1.3 and 1.6.',
      default: { low: 1.3, likely: 1.4, high: 1.6 },
      plausible: { min: 1, max: 2 },
      possible: { min: 1, max: 2 },
      usually: 'assumed',
    }),
    thickness: quantity('length', {
      label: 'Thickness',
      help: 'As it is sold: 1 in, 2 in, 4 in. Thick ones hold more dust.',
      default: 0.0254,
      plausible: { min: 0.006, max: 0.4 },
      possible: { min: 0.001 },
      usually: 'nameplate',
    }),
  },
  { label: 'Filter' },
);

const ducts = group(
  {
    handler: group(
      {
        place: choice(
          { attic: 'In the attic', closet: 'In a closet', below: 'Under the floor', kneewall: 'Behind a kneewall' },
          { label: 'Air handler stands', default: 'attic' },
        ),
        coil: quantity('pressure', {
          label: 'Pressure of anything beyond the unit itself',
          help: 'An added coil, humidifier or heater box, at the design flow.',
          default: 0,
          plausible: { min: 0, max: 120 },
          possible: { min: 0 },
          usually: 'nameplate',
        }),
        plenum: optionalLength(
          'From its outlet to the first take-off',
          3,
          'Along the supply plenum, to the nearer edge of the first collar.',
        ),
        at: placeAt(
          'Its place in plan',
          'Its middle, from the same corner as the ducts. Left empty it stands where supply and return begin.',
        ),
        setting: reference('candidates.*.blower.speeds', {
          label: 'Blower setting',
          help: 'Left empty the plan uses the highest in the table.',
        }),
        ...unitJoints,
      },
      { label: 'Air handler' },
    ),
    filter,
    sections,
    terminals,
    make: ductMake,
    cutting: ductCutting,
    north: quantity('angle', {
      label: 'Top of the plan looks to',
      help: 'Compass direction: north 0, east 90, south 180, west 270. Draws the north arrow.',
      neededBy: [],
      plausible: { min: 0, max: 360 },
      usually: 'measured',
    }),
  },
  { label: 'Ducts' },
);

/** Where things run: ducts, line set, drain, wires, and the way in. */
export const routes = group({ ducts, lineset, drain, wires, passages, access }, { label: 'Routes' });
