import { choice, date, map, quantity, reference, text } from './field.ts';
import { timeOfDay } from './timeOfDay.ts';

const air = (label: string, help: string) =>
  quantity('temperature', { label, help, neededBy: [], plausible: { min: -45, max: 70 }, usually: 'measured' });

const humidity = (label: string) =>
  quantity('relative-humidity', {
    label,
    neededBy: [],
    plausible: { min: 0.05, max: 1 },
    possible: { min: 0, max: 1 },
    usually: 'measured',
  });

/** The conditions under which readings were taken: entered once, and readings refer to them. */
export const visits = map(
  {
    name: text({ label: 'Name' }),
    day: date({ label: 'Day' }),
    time: timeOfDay('Time of day', { usually: 'measured' }),
    who: text({ label: 'Who read' }),
    mode: choice({ heating: 'Heating', cooling: 'Cooling' }, { label: 'Mode', neededBy: ['commissioning'] }),
    speed: choice(
      { full: 'Full speed', mid: 'Between', low: 'Lowest speed' },
      {
        label: 'Speed of the unit',
        help: 'Where its controls cannot hold a speed: full with the set point far off, lowest once it idles along.',
        default: 'full',
      },
    ),
    minutes: quantity('time', {
      label: 'Running steadily for',
      help: 'Since it started, changed speed or defrosted. Under 15 minutes readings are set aside.',
      neededBy: [],
      plausible: { min: 0, max: 86_400 },
      possible: { min: 0 },
      usually: 'measured',
    }),
    outdoor: quantity('temperature', {
      label: 'Outdoor air, in the shade',
      neededBy: ['commissioning'],
      plausible: { min: -45, max: 55 },
      usually: 'measured',
    }),
    outdoorHumidity: humidity('Outdoor humidity'),
    returnAir: quantity('temperature', {
      label: 'Air at the return grille',
      neededBy: ['commissioning'],
      plausible: { min: 5, max: 40 },
      usually: 'measured',
    }),
    returnHumidity: humidity('Humidity at the return grille'),
    supplyAir: air(
      'Supply air',
      'In the supply plenum, out of sight of the coil and the strips. Counted as a reading.',
    ),
    supplyHumidity: humidity('Humidity of the supply air'),
    atticAir: air('Air in the attic, beside the ducts', 'Left empty it is worked out from the roof.'),
    filter: choice(
      { unknown: 'Not looked at', clean: 'Clean', used: 'Used', dirty: 'Grey or matted', wet: 'Wet' },
      { label: 'Filter, looked at', default: 'unknown' },
    ),
    strips: choice(
      { unknown: 'Not looked at', off: 'Proved off', on: 'On' },
      { label: 'Backup strips', default: 'unknown' },
    ),
    doors: choice({ open: 'Open', shut: 'Shut' }, { label: 'Doors between the rooms', default: 'open' }),
    defrost: choice(
      { no: 'None in the last 15 minutes', yes: 'In defrost, or just after' },
      { label: 'Defrost', default: 'no' },
    ),
    setting: text({ label: 'Setting of the blower', help: 'As its table names it, where it was not the planned one.' }),
    houseBase: quantity('electric-power', {
      label: 'What the house draws without the unit',
      help: 'The house’s meter with the unit switched off at its breaker, everything else as it was.',
      neededBy: [],
      plausible: { min: 0, max: 15_000 },
      possible: { min: 0 },
      usually: 'measured',
    }),
    note: text({ label: 'Note', longest: 2000 }),
    dampers: map(
      {
        section: reference('routes.ducts.sections', { label: 'Of the run' }),
        turned: quantity('angle', {
          label: 'Turned from open',
          help: 'As its handle stood while flows were read: 0° along the duct is open.',
          neededBy: [],
          plausible: { min: 0, max: 60 },
          possible: { min: 0, max: 90 },
          usually: 'measured',
        }),
      },
      {
        label: 'Dampers as they stood',
        one: 'Damper',
        help: 'Only those that stood otherwise than drawn. Without a damper drawn one counts as open.',
      },
    ),
  },
  {
    label: 'Visits',
    one: 'Visit',
    help: 'The state in which readings are taken: once for all readings of an hour.',
  },
);

/** Numbers the builder took, each held against what the plan expects. Appended, never overwritten. */
export const readings = map(
  {
    what: text({ label: 'What was measured' }),
    subject: text({ label: 'Where' }),
    day: date({ label: 'Day' }),
    method: text({ label: 'How' }),
    value: quantity('number', {
      label: 'Reading',
      help: 'In the unit of what it is held against.',
      neededBy: ['commissioning'],
      plausible: { min: -1e6, max: 1e6 },
      usually: 'measured',
    }),
    note: text({ label: 'Note', longest: 2000 }),
    visit: reference('visits', { label: 'Taken at the visit' }),
    expected: text({ label: 'Held against', help: 'The expected reading it belongs to: air/static.' }),
    means: choice(
      {
        gauge: 'Water gauge or digital pressure gauge',
        bag: 'Bag and stopwatch',
        vane: 'Anemometer at the face',
        hood: 'Flow hood',
        thermometer: 'Thermometer',
        meter: 'Power meter on the unit’s own circuit',
        clamp: 'Clamp meter and voltage',
        house: 'Meter of the whole house, or the inverter’s display',
        cup: 'Cup and stopwatch',
        watch: 'Counted or timed by eye',
      },
      { label: 'Read with', neededBy: [] },
    ),
    repeats: quantity('count', {
      label: 'Times read',
      help: 'The reading is then their average.',
      default: 1,
      plausible: { min: 1, max: 30 },
      possible: { min: 1 },
      usually: 'measured',
    }),
    time: timeOfDay('Time of day', { usually: 'measured' }),
    who: text({ label: 'Who' }),
    baseTaken: choice(
      { unknown: 'Not said', yes: 'Taken off', no: 'Still in it' },
      {
        label: 'The house’s own draw',
        help: 'Only for power: whether what the house draws without the unit was taken off the reading.',
        default: 'unknown',
      },
    ),
  },
  { label: 'Readings', one: 'Reading' },
);
