import { choice, group, quantity } from './field.ts';

const small = (label: string, help: string, most: number) =>
  quantity('number', {
    label,
    help,
    neededBy: [],
    plausible: { min: 0, max: most },
    possible: { min: 0 },
    usually: 'estimated',
  });

/** Over how long, and at what interest, the candidates are compared. */
export const life = group(
  {
    years: quantity('count', {
      label: 'Years it is to last',
      default: { low: 10, likely: 15, high: 20 },
      plausible: { min: 3, max: 40 },
      possible: { above: 0 },
      usually: 'estimated',
    }),
    interest: quantity('fraction', {
      label: 'Interest above inflation',
      help: 'What your money would earn elsewhere, a year, prices rising taken off. 0: a coming year counts like this one.',
      default: 0,
      plausible: { min: -0.03, max: 0.15 },
      possible: { above: -1 },
      usually: 'estimated',
    }),
    upkeep: quantity('money', {
      label: 'Upkeep a year',
      help: 'Filters, cleaning, a visit every few years.',
      default: { low: 40, likely: 100, high: 300 },
      plausible: { min: 0, max: 3000 },
      possible: { min: 0 },
      usually: 'estimated',
    }),
    generatorHour: small(
      'Wear of the generator an hour, beside its fuel',
      'Oil, parts, and its price over the hours it lasts. Left empty nothing is counted, and said so.',
      20,
    ),
    otherHeat: small(
      'A kilowatt-hour of heat from the stove',
      'Fuel as it stands in the shed, by what it gives to the rooms. Left empty nothing is counted, and said so.',
      2,
    ),
  },
  { label: 'Cost over its life', help: 'In your money, today’s prices.' },
);

const part = (label: string) =>
  quantity('money', {
    label,
    neededBy: ['paperwork'],
    plausible: { min: 0, max: 40_000 },
    possible: { min: 0 },
    usually: 'estimated',
  });

/** What each part of the job costs where a quote leaves it out. */
export const scopePrices = group(
  {
    ducts: part('Ducts'),
    electrical: part('Electrical work'),
    removal: part('Taking out the old'),
    permit: part('Permit and its fees'),
    condensate: part('Drain for the water'),
    lineset: part('Line set'),
    startUp: part('First start with a report'),
  },
  {
    label: 'What a quote leaves out costs',
    help: 'A range does: what you would pay to have that part done by somebody else. 0 where there is nothing to do.',
  },
);

const who = (label: string) =>
  choice({ us: 'We ourselves', licensed: 'A licensed person' }, { label, neededBy: ['paperwork'] });

/** Who does the work that papers and laws usually keep for licensed people. */
export const hands = group(
  {
    refrigerant: who('Joining, vacuum and charge'),
    electrical: who('Wires and their connection'),
    gas: who('Gas, oil and flues'),
    startUp: who('The first start'),
  },
  { label: 'Who does what', help: 'Local law decides who may. Ask before you choose.' },
);
