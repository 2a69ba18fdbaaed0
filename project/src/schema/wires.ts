import { choice, group, quantity, text } from './field.ts';

const runLength = (label: string, help: string) =>
  quantity('length', {
    label,
    help,
    neededBy: ['circuit'],
    plausible: { min: 0.5, max: 150 },
    possible: { min: 0 },
    usually: 'measured',
  });
const chosenSize = (label: string, help: string) =>
  quantity('wire-size', {
    label,
    help,
    neededBy: [],
    plausible: { min: 0.8, max: 70 },
    possible: { min: 0.05 },
    usually: 'nameplate',
  });

/** How conductors lie, for their ampacity. */
const lying = {
  laid: choice(
    {
      cable: 'Plastic-sheathed house cable, dry places only',
      pipe: 'Single conductors in conduit or raceway',
      outdoor: 'Cable made for wet places',
    },
    { label: 'Laid as', default: 'pipe' },
  ),
  pipe: quantity('length', {
    label: 'Inner diameter of the conduit you mean to use',
    help: 'Half-inch thin-walled tubing measures 15.8 mm inside, three-quarter-inch 20.9 mm; plastic pipe a little less. Left empty the plan picks it.',
    neededBy: [],
    plausible: { min: 0.01, max: 0.1 },
    possible: { min: 0.001 },
    usually: 'nameplate',
  }),
  metal: choice({ copper: 'Copper', aluminium: 'Aluminium' }, { label: 'Conductors of', default: 'copper' }),
  together: quantity('count', {
    label: 'Current-carrying conductors side by side',
    help: 'In one pipe, cable or tight bundle; grounds do not count. This circuit alone is two.',
    default: 2,
    plausible: { min: 1, max: 40 },
    possible: { min: 1 },
    usually: 'measured',
  }),
  terminals: choice(
    { cool: '60 °C, or not marked', warm: '75 °C, marked at both ends' },
    {
      label: 'Terminals made for',
      help: 'Printed beside the screws of breaker, disconnect and unit: 60/75 °C or 75 °C. All of them have to say so.',
      default: 'cool',
    },
  ),
};

/** What the person means to use or has; what is left empty the plan picks. */
const meant = {
  size: chosenSize(
    'Conductor you mean to use',
    'As 10 AWG or 6 mm². Left empty the plan picks the thinnest that does.',
  ),
  ground: chosenSize('Grounding conductor you mean to use', 'Left empty the plan picks it.'),
  protection: quantity('current', {
    label: 'Breaker or fuse you mean to use',
    help: 'The number on its lever. Left empty the plan picks it.',
    neededBy: [],
    plausible: { min: 10, max: 100 },
    possible: { min: 0 },
    usually: 'nameplate',
  }),
  disconnect: quantity('current', {
    label: 'Disconnect, rated for',
    neededBy: [],
    plausible: { min: 15, max: 200 },
    possible: { min: 0 },
    usually: 'nameplate',
  }),
  disconnectDistance: quantity('length', {
    label: 'From the disconnect to the unit',
    help: 'Stand at the unit: you must see the disconnect and reach it without climbing over anything.',
    neededBy: ['circuit'],
    plausible: { min: 0.1, max: 30 },
    possible: { min: 0 },
    usually: 'measured',
  }),
};

/** One circuit from the panel or the inverter to a unit. */
const circuit = (label: string, to: string) =>
  group(
    {
      length: runLength(
        'Length of the way',
        `From the breaker to ${to}, up and down counted, as the cable really goes. One way.`,
      ),
      place: choice(
        {
          inside: 'Inside the house',
          attic: 'Through the attic',
          outdoors: 'Outdoors, in the shade',
          roof: 'On a roof in the sun',
        },
        {
          label: 'Hottest stretch of it',
          help: 'The hottest stretch counts for the whole.',
          default: 'attic',
        },
      ),
      ambient: quantity('temperature', {
        label: 'Hottest air along it',
        help: 'Left empty it is taken from your hot afternoon and from the attic as worked out.',
        neededBy: [],
        plausible: { min: 10, max: 70 },
        usually: 'measured',
      }),
      ...lying,
      ...meant,
    },
    { label },
  );

/** Wires: to the outdoor unit, to the air handler, and between the two. */
export const wires = group(
  {
    outdoor: circuit('To the outdoor unit', 'the outdoor unit'),
    handler: circuit('To the air handler, where it has a circuit of its own', 'the air handler'),
    between: group(
      {
        length: runLength('Length of the way', 'From the outdoor unit to the air handler as the cable really goes.'),
        conductors: quantity('count', {
          label: 'Conductors in the cable you mean to pull, the ground among them',
          neededBy: ['circuit'],
          plausible: { min: 2, max: 10 },
          possible: { min: 1 },
          usually: 'nameplate',
        }),
        size: chosenSize('Size of each', 'Printed on the sheath.'),
        screened: choice({ yes: 'Yes', no: 'No' }, { label: 'Screened', default: 'no' }),
      },
      { label: 'Cable between the units' },
    ),
    code: text({
      label: 'Electrical code that holds at your place, and its edition',
      help: 'Ask the authority that gives the permit. The tables here are those of one national code of 2023; yours decides.',
      longest: 80,
    }),
    dropMost: quantity('fraction', {
      label: 'Most voltage the wires of a circuit may lose',
      help: 'Three in a hundred is the usual recommendation. Long ways from an inverter deserve less.',
      default: 0.03,
      plausible: { min: 0.005, max: 0.08 },
      possible: { min: 0 },
      usually: 'assumed',
    }),
  },
  {
    label: 'Wires',
    help: 'Electricity can kill. What stands here helps to plan and to buy; the local code and a licensed electrician decide.',
  },
);
