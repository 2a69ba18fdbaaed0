import { electrics } from './electrics.ts';
import { choice, flag, group, map, quantity, text } from './field.ts';
import { learnedUnit } from './learned.ts';
import { unitOpenings } from './unitOpenings.ts';

const rows = map(
  {
    mode: choice({ heating: 'Heating', cooling: 'Cooling' }, { label: 'Mode', default: 'heating' }),
    speed: choice(
      {
        least: 'Lowest continuous',
        between: 'Intermediate, as in the seasonal tests',
        rated: 'Rated',
        most: 'Highest',
      },
      { label: 'Compressor speed', default: 'rated' },
    ),
    outdoor: quantity('temperature', {
      label: 'Outdoor air',
      neededBy: ['equipment'],
      plausible: { min: -35, max: 55 },
      usually: 'nameplate',
    }),
    indoor: quantity('temperature', {
      label: 'Indoor air entering',
      default: { low: 20, likely: 21.1, high: 26.7 },
      plausible: { min: 10, max: 35 },
      usually: 'nameplate',
    }),
    indoorWetBulb: quantity('temperature', {
      label: 'Indoor wet bulb',
      help: 'For cooling rows; 19.4 °C is the usual rating point.',
      neededBy: [],
      plausible: { min: 5, max: 30 },
      usually: 'nameplate',
    }),
    capacity: quantity('power', {
      label: 'Capacity',
      neededBy: ['equipment'],
      plausible: { min: 500, max: 30_000 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    power: quantity('electric-power', {
      label: 'Input power',
      neededBy: ['equipment'],
      plausible: { min: 100, max: 15_000 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    airflow: quantity('flow', {
      label: 'Airflow',
      neededBy: [],
      plausible: { min: 0.02, max: 1.2 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    sensibleShare: quantity('fraction', {
      label: 'Sensible share',
      help: 'Cooling rows: the part that lowers the temperature; the rest dries the air.',
      neededBy: [],
      plausible: { min: 0.4, max: 1 },
      possible: { min: 0, max: 1 },
      usually: 'nameplate',
    }),
    defrostCounted: choice({ yes: 'Yes', no: 'No' }, { label: 'Defrost counted in these figures', default: 'no' }),
  },
  {
    label: 'Data sheet rows',
    one: 'Row',
    help: 'Whatever speeds and temperatures the sheet states. Nothing is read beyond its ends without saying so.',
  },
);

const blower = group(
  {
    kind: choice(
      {
        fixed: 'Fixed speed',
        torque: 'Constant torque',
        airflow: 'Constant airflow',
      },
      { label: 'Kind of motor', default: 'torque' },
    ),
    speeds: map(
      {
        name: text({ label: 'Setting' }),
        points: map(
          {
            flow: quantity('flow', {
              label: 'Flow',
              neededBy: ['air'],
              plausible: { min: 0.01, max: 1.5 },
              possible: { min: 0 },
              usually: 'nameplate',
            }),
            pressure: quantity('pressure', {
              label: 'External static',
              neededBy: ['air'],
              plausible: { min: 0, max: 400 },
              possible: { min: 0 },
              usually: 'nameplate',
            }),
            power: quantity('electric-power', {
              label: 'Blower power',
              neededBy: [],
              plausible: { min: 5, max: 1500 },
              possible: { min: 0 },
              usually: 'nameplate',
            }),
          },
          { label: 'Blower table', one: 'Point', help: 'Flow at each external static pressure, from the data sheet.' },
        ),
      },
      { label: 'Settings', one: 'Setting' },
    ),
    staticMost: quantity('pressure', {
      label: 'Most external static allowed',
      help: 'From the data sheet; common ducted units allow 0.5 inH2O, low-static ones 0.2.',
      neededBy: ['air'],
      plausible: { min: 10, max: 300 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    filterIncluded: choice({ yes: 'Yes', no: 'No' }, { label: 'Filter already counted in the table', default: 'no' }),
  },
  { label: 'Blower' },
);

const box = (label: string, neededBy: readonly 'access'[] = ['access']) =>
  group(
    {
      width: length('Width', neededBy),
      depth: length('Depth', neededBy),
      height: length('Height', neededBy),
      mass: quantity('mass', {
        label: 'Mass',
        neededBy,
        plausible: { min: 5, max: 300 },
        possible: { min: 0 },
        usually: 'nameplate',
      }),
    },
    { label },
  );
const length = (label: string, neededBy: readonly 'access'[]) =>
  quantity('length', {
    label,
    neededBy,
    plausible: { min: 0.1, max: 2.5 },
    possible: { min: 0 },
    usually: 'nameplate',
  });

const lineLimits = group(
  {
    lengthLeast: lineLength('Shortest line set'),
    lengthMost: lineLength('Longest line set'),
    riseMost: lineLength('Highest rise'),
    lengthCharged: lineLength('Length the factory charge covers'),
    chargePerMetre: quantity('line-charge', {
      label: 'Refrigerant to add beyond that',
      help: 'As 20 g/m or 0.22 oz/ft.',
      neededBy: [],
      plausible: { min: 0.005, max: 0.12 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    charge: quantity('mass', {
      label: 'Factory charge',
      neededBy: ['lineset'],
      plausible: { min: 0.2, max: 8 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    sound: quantity('sound-level', {
      label: 'Sound power of the outdoor unit',
      help: 'dB(A) by the data sheet, the louder mode: sound power, not the pressure at some metres.',
      neededBy: ['lineset'],
      plausible: { min: 40, max: 85 },
      usually: 'nameplate',
    }),
  },
  { label: 'Line-set limits', help: 'What is left empty stays unknown.' },
);
function lineLength(label: string) {
  return quantity('length', {
    label,
    neededBy: ['lineset'],
    plausible: { min: 0.5, max: 80 },
    possible: { min: 0 },
    usually: 'nameplate',
  });
}

/** Units that might be bought, as rows from their data sheets. */
export const candidates = map(
  {
    name: text({ label: 'Name' }),
    chosen: flag({ label: 'This is the one the plan is made for' }),
    refrigerant: text({ label: 'Refrigerant' }),
    outdoorLeast: quantity('temperature', {
      label: 'Lowest outdoor temperature for heating',
      neededBy: ['equipment'],
      plausible: { min: -40, max: 5 },
      usually: 'nameplate',
    }),
    price: quantity('money', {
      label: 'Price',
      neededBy: [],
      plausible: { min: 200, max: 40_000 },
      possible: { min: 0 },
      usually: 'estimated',
    }),
    tier: text({
      label: 'Efficiency tier by its papers',
      help: 'As the list or label writes it; incentives ask for it.',
    }),
    rows,
    blower,
    electrics,
    handler: box('Air handler, bare'),
    handlerCrated: box('Air handler, crated'),
    handlerPart: box('Air handler taken apart: its largest part', []),
    openings: unitOpenings,
    outdoorUnit: box('Outdoor unit'),
    lineLimits,
    learned: learnedUnit,
  },
  { label: 'Candidate units', one: 'Unit' },
);
