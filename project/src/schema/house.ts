import { assemblies } from './assemblies.ts';
import { exhaust } from './exhaust.ts';
import { choice, group, map, points, quantity, reference, text } from './field.ts';
import { flue } from './flue.ts';
import { learnedHouse } from './learned.ts';
import { openings } from './openings.ts';
import { rest } from './rest.ts';

const door = group(
  {
    shut: choice(
      {
        usual: 'As such rooms usually are: bedrooms, baths and work rooms shut',
        shut: 'Shut at night or when in use',
        open: 'Always open, or there is no door',
      },
      { label: 'Door', default: 'usual' },
    ),
    gap: quantity('length', {
      label: 'Gap under the door',
      help: 'With the door shut, from the floor or the top of the carpet to its lower edge. Push a rule or a stack of coins in.',
      default: { low: 0.006, likely: 0.013, high: 0.019 },
      plausible: { min: 0, max: 0.08 },
      possible: { min: 0, max: 1 },
      usually: 'measured',
    }),
    width: quantity('length', {
      label: 'Width of the door',
      help: 'The leaf itself, edge to edge.',
      default: { low: 0.71, likely: 0.76, high: 0.81 },
      plausible: { min: 0.45, max: 1.3 },
      possible: { min: 0 },
      usually: 'measured',
    }),
    transfer: quantity('area', {
      label: 'Open area of a grille to the hall',
      help: 'Through the wall or the door, or over the ceiling by a short duct. Take the open area from its sheet; without one, seven tenths of one face.',
      default: 0,
      plausible: { min: 0, max: 0.4 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    faces: choice(
      {
        one: 'One grille, or two straight opposite each other with nothing between',
        two: 'Two grilles with a duct or a stud bay between them',
      },
      { label: 'That grille is', default: 'one' },
    ),
  },
  {
    label: 'Door',
    help: 'Air blown into a room has to get out again when its door is shut.',
  },
);

const rooms = map(
  {
    name: text({ label: 'Name' }),
    use: choice(
      {
        living: 'Living',
        kitchen: 'Kitchen',
        bedroom: 'Bedroom',
        bath: 'Bath',
        work: 'Work room',
        hall: 'Hall or passage',
        store: 'Store',
      },
      { label: 'Use', default: 'living' },
    ),
    storey: quantity('count', {
      label: 'Storey',
      help: '1 is the ground floor.',
      default: 1,
      plausible: { min: 1, max: 3 },
      possible: { min: 0, max: 10 },
      usually: 'measured',
    }),
    floorArea: quantity('area', {
      label: 'Floor area',
      help: 'Wall to wall; 3.5 x 4 m may be typed as it is. An outline that is drawn whole is used instead; both are asked about where they differ by more than a tenth.',
      neededBy: ['loads', 'air'],
      plausible: { min: 1, max: 200 },
      possible: { min: 0 },
      usually: 'measured',
    }),
    height: quantity('length', {
      label: 'Ceiling height',
      help: 'The mean height under a slope.',
      default: { low: 2.3, likely: 2.4, high: 2.6 },
      plausible: { min: 1.8, max: 6 },
      possible: { min: 0 },
      usually: 'measured',
    }),
    outline: points({ label: 'Outline', help: 'Corners of the floor plan, in order round the room.' }),
    conditioned: choice({ yes: 'Heated and cooled', no: 'Left to itself' }, { label: 'Heated', default: 'yes' }),
    door,
    rest,
  },
  { label: 'Rooms', one: 'Room' },
);

const surfaces = map(
  {
    name: text({ label: 'Name' }),
    room: reference('house.rooms', { label: 'Room', neededBy: ['loads'] }),
    kind: choice(
      { wall: 'Wall', ceiling: 'Ceiling', roof: 'Sloped roof', floor: 'Floor', door: 'Solid door' },
      { label: 'Kind', default: 'wall' },
    ),
    other: choice(
      {
        outdoors: 'Outdoors',
        attic: 'Attic',
        below: 'Crawl space or unheated basement',
        ground: 'Ground',
        unheated: 'Unheated room or shed',
      },
      { label: 'Other side', default: 'outdoors' },
    ),
    area: quantity('area', {
      label: 'Area',
      help: 'The whole surface with its windows and doors; their area is taken off.',
      neededBy: ['loads'],
      plausible: { min: 0.2, max: 300 },
      possible: { min: 0 },
      usually: 'measured',
    }),
    azimuth: quantity('angle', {
      label: 'Faces',
      help: 'Compass direction the outside looks to: north 0, east 90, south 180, west 270.',
      neededBy: ['loads'],
      plausible: { min: 0, max: 360 },
      possible: { min: -360, max: 360 },
      usually: 'measured',
    }),
    tilt: quantity('angle', {
      label: 'Slope',
      help: 'Upright wall 90, level ceiling 0. Left empty it follows from the kind.',
      neededBy: [],
      plausible: { min: 0, max: 180 },
      possible: { min: 0, max: 180 },
      usually: 'measured',
    }),
    assembly: reference('house.assemblies', { label: 'Built as', neededBy: ['loads'] }),
    absorptance: quantity('fraction', {
      label: 'Sun taken up by the outside',
      help: 'White about 0.3, wood or brick 0.6, dark shingles 0.92.',
      default: { low: 0.4, likely: 0.6, high: 0.8 },
      plausible: { min: 0.1, max: 0.98 },
      possible: { min: 0, max: 1 },
      usually: 'assumed',
    }),
  },
  {
    label: 'Surfaces',
    one: 'Surface',
    help: 'Walls, ceilings, roofs and floors that part a room from something else.',
  },
);

const roof = group(
  {
    pitch: quantity('angle', {
      label: 'Roof pitch',
      help: '9 in 12 is 36.9 degrees.',
      default: { low: 18, likely: 26.6, high: 40 },
      plausible: { min: 0, max: 60 },
      possible: { min: 0, max: 89 },
      usually: 'measured',
    }),
    absorptance: quantity('fraction', {
      label: 'Sun taken up by the roof',
      help: 'Dark shingles 0.92, weathered metal 0.65, white metal 0.3.',
      default: { low: 0.8, likely: 0.9, high: 0.95 },
      plausible: { min: 0.1, max: 0.98 },
      possible: { min: 0, max: 1 },
      usually: 'assumed',
    }),
    uValue: quantity('u-value', {
      label: 'Heat flow through the roof deck',
      help: 'Deck and covering only, films left out; bare boards and shingles are about 3.',
      default: { low: 2, likely: 3, high: 4 },
      plausible: { min: 0.1, max: 8 },
      possible: { min: 0 },
      usually: 'assumed',
    }),
    airChanges: quantity('air-changes', {
      label: 'Attic air changes an hour',
      help: 'A vented attic usually sees 2 to 6; a tight one 0.5.',
      default: { low: 1.5, likely: 3, high: 8 },
      plausible: { min: 0, max: 30 },
      possible: { min: 0 },
      usually: 'assumed',
    }),
  },
  { label: 'Roof and attic' },
);

const people = group(
  {
    count: quantity('count', {
      label: 'People living there',
      default: { low: 1, likely: 2, high: 4 },
      plausible: { min: 0, max: 12 },
      possible: { min: 0 },
      usually: 'measured',
    }),
    appliances: quantity('power', {
      label: 'Heat from appliances on a hot afternoon',
      help: 'Fridge, cooking, screens: usually 350 to 470 W in a kitchen at work.',
      default: { low: 250, likely: 400, high: 600 },
      plausible: { min: 0, max: 3000 },
      possible: { min: 0 },
      usually: 'estimated',
    }),
  },
  { label: 'People and appliances' },
);

const setpoints = group(
  {
    heating: quantity('temperature', {
      label: 'Kept at in winter',
      default: 20,
      plausible: { min: 12, max: 25 },
      possible: { min: 0, max: 40 },
      usually: 'estimated',
    }),
    cooling: quantity('temperature', {
      label: 'Kept at in summer',
      default: 24,
      plausible: { min: 20, max: 30 },
      possible: { min: 10, max: 45 },
      usually: 'estimated',
    }),
    nightSetback: quantity('temperature-difference', {
      label: 'Lower at night by',
      help: 'A heat pump has to make it up in the morning; often nothing is gained.',
      default: 0,
      plausible: { min: 0, max: 8 },
      possible: { min: 0, max: 30 },
      usually: 'estimated',
    }),
    nightFrom: quantity('number', {
      label: 'Night begins at hour',
      help: 'Hour of the day, 0 to 24.',
      default: 22,
      plausible: { min: 0, max: 24 },
      possible: { min: 0, max: 24 },
      usually: 'estimated',
    }),
    nightTo: quantity('number', {
      label: 'Night ends at hour',
      help: 'Hour of the day, 0 to 24.',
      default: 6,
      plausible: { min: 0, max: 24 },
      possible: { min: 0, max: 24 },
      usually: 'estimated',
    }),
    humidity: quantity('relative-humidity', {
      label: 'Most humidity wanted in summer',
      default: 0.5,
      plausible: { min: 0.3, max: 0.65 },
      possible: { min: 0, max: 1 },
      usually: 'estimated',
    }),
    thermostat: reference('house.rooms', {
      label: 'Room with the thermostat',
      help: 'The other rooms follow it. Left empty it hangs in the hall, or in the largest room.',
      neededBy: [],
    }),
  },
  { label: 'Temperatures wanted' },
);

const fuel = group(
  {
    kind: choice(
      {
        wood: 'Dry split wood',
        pellets: 'Wood pellets',
        oil: 'Heating oil',
        propane: 'Propane',
        gas: 'Natural gas',
        electricity: 'Electric heat',
      },
      { label: 'Fuel burned', default: 'wood' },
    ),
    energy: quantity('energy', {
      label: 'Energy in the fuel burned last winter',
      help: 'As the bill says it: kWh, therms, or what was burned: 3 cords, 500 gal of oil, 300 lb of propane, 900 ccf, 2 US tons of pellets. A cord, 128 ft³ stacked, counts as 20 million Btu: softwood and green wood hold less.',
      neededBy: [],
      plausible: { min: 100, max: 100_000 },
      possible: { min: 0 },
      usually: 'estimated',
    }),
    efficiency: quantity('fraction', {
      label: 'Share that reached the rooms',
      help: 'The rest went up the flue or was lost in pipes and ducts. Left empty it follows from the fuel.',
      neededBy: [],
      plausible: { min: 0.1, max: 1 },
      possible: { min: 0, max: 1 },
      usually: 'assumed',
    }),
    indoor: quantity('temperature', {
      label: 'How warm it was kept',
      default: { low: 16, likely: 19, high: 21 },
      plausible: { min: 5, max: 26 },
      usually: 'estimated',
    }),
  },
  { label: 'Last winter', help: 'Worth more than twenty answers about walls.' },
);

/** The house as it stands: by numbers, by room, or drawn. */
export const house = group(
  {
    floorArea: quantity('area', {
      label: 'Heated floor area',
      help: 'Used until rooms are entered.',
      neededBy: [],
      plausible: { min: 15, max: 600 },
      possible: { min: 0 },
      usually: 'measured',
    }),
    storeys: quantity('count', {
      label: 'Storeys',
      default: 1,
      plausible: { min: 1, max: 3 },
      possible: { min: 1, max: 10 },
      usually: 'measured',
    }),
    era: choice(
      {
        'before-1940': 'Before 1940',
        '1940-1965': '1940 to 1965',
        '1966-1980': '1966 to 1980',
        '1981-1992': '1981 to 1992',
        '1993-2006': '1993 to 2006',
        'since-2007': 'Since 2007',
      },
      { label: 'Built', default: '1966-1980' },
    ),
    attic: choice(
      { vented: 'Attic with vents', sealed: 'Attic without vents', none: 'No attic: rooms up to the roof' },
      { label: 'Under the roof', default: 'vented' },
    ),
    below: choice(
      { crawl: 'Crawl space', slab: 'Slab on the ground', basement: 'Unheated basement' },
      { label: 'Under the floor', default: 'crawl' },
    ),
    draught: choice(
      {
        tight: 'No draughts even in a gale',
        fair: 'Draughts only in strong wind',
        draughty: 'Curtains move on windy days',
        leaky: 'You feel wind indoors',
      },
      { label: 'Draughts', default: 'draughty' },
    ),
    airtightness: quantity('air-changes', {
      label: 'Blower-door figure',
      help: 'Air changes an hour at 50 Pa. Without a test it is assumed from the draughts.',
      neededBy: [],
      plausible: { min: 0.4, max: 40 },
      possible: { min: 0 },
      usually: 'measured',
    }),
    ...flue,
    exhaust,
    rooms,
    surfaces,
    openings,
    assemblies,
    roof,
    people,
    setpoints,
    fuel,
    learned: learnedHouse,
  },
  { label: 'House' },
);
