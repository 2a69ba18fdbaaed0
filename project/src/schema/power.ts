import { choice, group, map, quantity, text } from './field.ts';

const watts = (label: string, most: number, help?: string) =>
  quantity('electric-power', {
    label,
    ...(help ? { help } : {}),
    neededBy: [],
    plausible: { min: 0, max: most },
    possible: { min: 0 },
    usually: 'nameplate',
  });

const arrays = map(
  {
    name: text({ label: 'Name' }),
    power: quantity('electric-power', {
      label: 'Rated power',
      neededBy: ['offgrid'],
      plausible: { min: 50, max: 50_000 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    tilt: quantity('angle', {
      label: 'Slope',
      neededBy: ['offgrid'],
      plausible: { min: 0, max: 90 },
      possible: { min: 0, max: 180 },
      usually: 'measured',
    }),
    azimuth: quantity('angle', {
      label: 'Faces',
      neededBy: ['offgrid'],
      plausible: { min: 0, max: 360 },
      possible: { min: -360, max: 360 },
      usually: 'measured',
    }),
  },
  { label: 'Solar arrays', one: 'Array' },
);

const battery = group(
  {
    energy: quantity('energy', {
      label: 'Energy it holds',
      help: 'Ampere-hours at volts may be typed too.',
      neededBy: ['offgrid'],
      plausible: { min: 0.5, max: 400 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    chemistry: choice(
      { 'lithium-iron-phosphate': 'Lithium iron phosphate', 'lead-acid': 'Lead acid', other: 'Other' },
      { label: 'Kind', default: 'lithium-iron-phosphate' },
    ),
    place: choice({ heated: 'In a heated room', shed: 'In an unheated shed' }, { label: 'Stands', default: 'heated' }),
    voltage: quantity('voltage', {
      label: 'Voltage',
      default: 51.2,
      plausible: { min: 12, max: 800 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
  },
  { label: 'Battery' },
);

const generator = group(
  {
    power: watts('Rated power', 30_000),
    charging: quantity('electric-power', {
      label: 'Power the charger takes from it',
      help: 'At its highest charging current: amperes times battery volts, and a tenth more. The charger’s settings often limit it.',
      neededBy: ['circuit'],
      plausible: { min: 100, max: 20_000 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    fuel: choice({ diesel: 'Diesel', propane: 'Propane', petrol: 'Petrol' }, { label: 'Fuel', default: 'diesel' }),
  },
  { label: 'Generator' },
);

/** Where the electricity comes from and what it can carry. */
export const power = group(
  {
    supply: choice({ grid: 'The grid', own: 'My own' }, { label: 'Electricity from', default: 'grid' }),
    voltage: quantity('voltage', {
      label: 'Voltage at hand',
      default: 240,
      plausible: { min: 100, max: 480 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    phases: choice({ one: 'Single phase', three: 'Three phase' }, { label: 'Phases', default: 'one' }),
    frequency: quantity('frequency', {
      label: 'Frequency',
      default: 60,
      plausible: { min: 50, max: 60 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    inverter: group(
      {
        continuous: quantity('electric-power', {
          label: 'Inverter, continuous',
          neededBy: ['equipment'],
          plausible: { min: 200, max: 40_000 },
          possible: { min: 0 },
          usually: 'nameplate',
        }),
        surge: quantity('electric-power', {
          label: 'Inverter, for a few seconds',
          help: 'Surge or peak power on its sheet, for five seconds or so.',
          neededBy: ['circuit'],
          plausible: { min: 200, max: 100_000 },
          possible: { min: 0 },
          usually: 'nameplate',
        }),
        legs: choice(
          {
            two: '120 and 240 V: two legs and a neutral',
            one: '240 V only',
            low: '120 V only',
          },
          {
            label: 'Inverter gives',
            help: 'Read it at the output terminals: L1, N and L2 are two legs.',
            neededBy: ['circuit'],
          },
        ),
        idle: quantity('electric-power', {
          label: 'Idle draw',
          default: { low: 20, likely: 50, high: 80 },
          plausible: { min: 0, max: 300 },
          possible: { min: 0 },
          usually: 'nameplate',
        }),
      },
      { label: 'Inverter' },
    ),
    otherLoad: quantity('electric-power', {
      label: 'Most else that runs at once',
      help: 'Well pump, kettle, fridge: what is on at the worst moment.',
      default: { low: 800, likely: 1500, high: 2500 },
      plausible: { min: 0, max: 20_000 },
      possible: { min: 0 },
      usually: 'estimated',
    }),
    otherStart: quantity('electric-power', {
      label: 'Largest start among the rest',
      help: 'What the worst motor takes on top of all this in its first second: five to six times its running power. A well pump of 1/2 hp: about 3 kW.',
      default: { low: 500, likely: 2000, high: 4000 },
      plausible: { min: 0, max: 30_000 },
      possible: { min: 0 },
      usually: 'estimated',
    }),
    otherOnOneLeg: quantity('fraction', {
      label: 'Share of the rest on the busier leg',
      help: 'Of what runs at 120 V. One half is even; all on one leg is 100 %.',
      default: { low: 0.5, likely: 0.6, high: 0.8 },
      plausible: { min: 0.5, max: 1 },
      possible: { min: 0, max: 1 },
      usually: 'estimated',
    }),
    arrays,
    battery,
    generator,
  },
  { label: 'Power' },
);
