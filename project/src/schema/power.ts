import { choice, group, hours, map, quantity, text } from './field.ts';
import { learnedHousehold } from './learned.ts';
import { costs, motors, tariff } from './powerMoney.ts';

const watts = (label: string, most: number, help?: string) =>
  quantity('electric-power', {
    label,
    ...(help ? { help } : {}),
    neededBy: [],
    plausible: { min: 0, max: most },
    possible: { min: 0 },
    usually: 'nameplate',
  });

const share = (
  label: string,
  value: number | { low: number; likely: number; high: number },
  usually: 'nameplate' | 'estimated',
  help?: string,
) =>
  quantity('fraction', {
    label,
    ...(help ? { help } : {}),
    default: value,
    plausible: { min: 0, max: 1 },
    possible: { min: 0, max: 1 },
    usually,
  });

const rows = group(
  {
    count: quantity('count', {
      label: 'Rows, one behind the other',
      default: 1,
      plausible: { min: 1, max: 20 },
      possible: { min: 1 },
      usually: 'measured',
    }),
    pitch: quantity('length', {
      label: 'From row to row, on the level',
      neededBy: ['offgrid'],
      plausible: { min: 0.5, max: 20 },
      possible: { min: 0.01 },
      usually: 'measured',
    }),
    slant: quantity('length', {
      label: 'Height of a row along its slope',
      neededBy: ['offgrid'],
      plausible: { min: 0.3, max: 10 },
      possible: { min: 0.01 },
      usually: 'measured',
    }),
  },
  { label: 'Rows on the ground', help: 'Only where there is more than one row: the front rows shade those behind.' },
);

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
    mounting: choice(
      { roof: 'Close to a roof', rack: 'On an open rack' },
      { label: 'Mounted', help: 'Air behind the panels keeps them cooler.', default: 'roof' },
    ),
    perKelvin: quantity('number', {
      label: 'Change of power for each K',
      help: 'From the data sheet, as a share: -0.35 %/°C is -0.0035.',
      default: { low: -0.0042, likely: -0.0035, high: -0.0026 },
      plausible: { min: -0.006, max: 0 },
      usually: 'nameplate',
    }),
    soiling: share('Light lost to dirt', { low: 0.01, likely: 0.02, high: 0.06 }, 'estimated'),
    snow: share(
      'Light lost to snow in freezing months',
      { low: 0, likely: 0.1, high: 0.4 },
      'estimated',
      'Counts in months whose mean is below freezing. Steep or swept panels lose little, flat ones under a deep winter nearly all.',
    ),
    rows,
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
    usable: quantity('fraction', {
      label: 'Share of it that is used',
      help: 'Left empty: nine tenths of lithium iron phosphate, half of lead acid, eight tenths of others.',
      neededBy: [],
      plausible: { min: 0.2, max: 1 },
      possible: { min: 0.01, max: 1 },
      usually: 'estimated',
    }),
    roundTrip: quantity('fraction', {
      label: 'Given back of what was put in',
      default: { low: 0.92, likely: 0.95, high: 0.98 },
      plausible: { min: 0.6, max: 1 },
      possible: { min: 0.1, max: 1 },
      usually: 'nameplate',
    }),
    cold: share(
      'Share of its energy left at -20 °C',
      { low: 0.5, likely: 0.6, high: 0.7 },
      'nameplate',
      'For lithium cells; makers state from half to seven tenths.',
    ),
    chargeMost: watts('Taken at most, charging', 200_000, 'From its data sheet, for the whole battery.'),
    dischargeMost: watts('Given at most', 200_000),
    heater: quantity('electric-power', {
      label: 'Heater in its box',
      help: 'Runs from the battery and the sun.',
      default: 0,
      plausible: { min: 0, max: 1000 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    heaterBelow: quantity('temperature', {
      label: 'Heater on below',
      default: 5,
      plausible: { min: -10, max: 25 },
      usually: 'nameplate',
    }),
    boxLoss: quantity('conductance', {
      label: 'Heat lost by its box',
      help: 'A bare rack some 15 W/K; a box with 50 mm of foam 1 to 3 W/K.',
      default: { low: 3, likely: 8, high: 20 },
      plausible: { min: 0.3, max: 60 },
      possible: { min: 0.05 },
      usually: 'estimated',
    }),
    cycles: quantity('count', {
      label: 'Full cycles to the end of its life',
      help: 'Lead acid stands 500 to 1500 shallow ones.',
      default: { low: 2500, likely: 4000, high: 6000 },
      plausible: { min: 100, max: 15_000 },
      possible: { min: 1 },
      usually: 'nameplate',
    }),
    years: quantity('count', {
      label: 'Years to the end of its life, used or not',
      default: { low: 10, likely: 15, high: 20 },
      plausible: { min: 2, max: 40 },
      possible: { min: 0.5 },
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
      default: { low: 2000, likely: 3500, high: 6000 },
      plausible: { min: 100, max: 20_000 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    fuel: choice({ diesel: 'Diesel', propane: 'Propane', petrol: 'Petrol' }, { label: 'Fuel', default: 'diesel' }),
    startBelow: share('Started when the battery is below', 0.25, 'estimated'),
    stopAbove: share('Stopped when it is above', 0.8, 'estimated'),
    least: share(
      'Least load it should run at',
      0.3,
      'nameplate',
      'Below it for long a diesel soots up: charge the battery with the rest.',
    ),
  },
  { label: 'Generator' },
);

const charger = group(
  {
    solar: share(
      'Kept between panels and battery',
      { low: 0.86, likely: 0.91, high: 0.95 },
      'estimated',
      'Wires, joints, unlike panels and the charge controller.',
    ),
    kept: share('Kept in charging from it', { low: 0.9, likely: 0.93, high: 0.95 }, 'nameplate'),
  },
  { label: 'Chargers' },
);

const household = group(
  {
    daily: quantity('energy', {
      label: 'Used in a day beside heating and cooling',
      default: { low: 3, likely: 6, high: 12 },
      plausible: { min: 0.2, max: 60 },
      possible: { min: 0 },
      usually: 'estimated',
    }),
    hours: hours({
      label: 'By the hour of the day',
      help: '24 numbers from midnight on, in any unit: only their shape counts. Left empty: quiet nights, more at seven and in the evening.',
    }),
    essential: share('Share of it that must not stop', { low: 0.3, likely: 0.5, high: 0.8 }, 'estimated'),
    shedFirst: choice(
      { household: 'What can wait in the household', heat: 'The heat pump' },
      { label: 'Given up first when power is short', default: 'household' },
    ),
    learned: learnedHousehold,
  },
  { label: 'Household' },
);

const stove = group(
  {
    heat: quantity('power', {
      label: 'Heat it gives, burning',
      help: 'A wood stove or another heater that runs without electricity, in the room with the thermostat: what it gives at its most. It is fed as the room asks.',
      neededBy: [],
      plausible: { min: 500, max: 20_000 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    lightBelow: quantity('temperature-difference', {
      label: 'Lit when it is too cold by',
      default: 2,
      plausible: { min: 0.5, max: 8 },
      possible: { min: 0 },
      usually: 'estimated',
    }),
  },
  { label: 'Stove', help: 'Only lit where power does not do.' },
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
          neededBy: ['equipment', 'offgrid'],
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
        efficiency: quantity('fraction', {
          label: 'Efficiency at full load',
          default: { low: 0.9, likely: 0.93, high: 0.95 },
          plausible: { min: 0.7, max: 1 },
          possible: { min: 0.01, max: 1 },
          usually: 'nameplate',
        }),
        voltageLeast: quantity('voltage', {
          label: 'Lowest battery voltage it takes',
          help: 'Where it shuts off, by its sheet or settings. Left empty: seven eighths of the battery’s.',
          neededBy: [],
          plausible: { min: 9, max: 700 },
          possible: { min: 1 },
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
    motors,
    household,
    arrays,
    charger,
    battery,
    generator,
    stove,
    costs,
    tariff,
  },
  { label: 'Power' },
);
