import { group, map, quantity, text } from './field.ts';

const money = (label: string, value: { low: number; likely: number; high: number }, most: number) =>
  quantity('money', {
    label,
    default: value,
    plausible: { min: 0, max: most },
    possible: { min: 0 },
    usually: 'estimated',
  });

/** Prices below one: money itself is printed in whole units. */
const small = (label: string, most: number, help?: string) =>
  quantity('number', {
    label,
    ...(help ? { help } : {}),
    neededBy: [],
    plausible: { min: 0, max: most },
    possible: { min: 0 },
    usually: 'nameplate',
  });

/** What more of it costs, in the project's money. Source of the defaults: `helps.costs` (common practice). */
export const costs = group(
  {
    panels: money('A kilowatt of panels, put up', { low: 700, likely: 1400, high: 2800 }, 20_000),
    battery: money('A kilowatt-hour of battery', { low: 220, likely: 400, high: 800 }, 5000),
    generator: money('A kilowatt of generator', { low: 250, likely: 500, high: 1100 }, 5000),
    fuel: quantity('price-of-volume', {
      label: 'Its fuel',
      help: 'As it stands in your tank, carrying counted: by the gallon or by the litre.',
      default: { low: 1, likely: 1.6, high: 2.6 },
      plausible: { min: 0, max: 20 },
      possible: { min: 0 },
      usually: 'estimated',
    }),
  },
  { label: 'What it costs', help: 'In your money. Left empty: common practice, as wide as it is.' },
);

const hour = (label: string) =>
  quantity('count', {
    label,
    neededBy: ['offgrid'],
    plausible: { min: 0, max: 24 },
    possible: { min: 0, max: 24 },
    usually: 'nameplate',
  });

const month = (label: string, help?: string) =>
  quantity('count', {
    label,
    ...(help ? { help } : {}),
    neededBy: [],
    plausible: { min: 1, max: 12 },
    possible: { min: 1, max: 12 },
    usually: 'nameplate',
  });

const bands = map(
  {
    name: text({ label: 'Name' }),
    from: hour('From this hour'),
    to: hour('Up to this hour'),
    fromMonth: month('From this month', '1 for January. Left empty: all year.'),
    toMonth: month('To the end of this month'),
    price: quantity('number', {
      label: 'Price of a kilowatt-hour',
      neededBy: ['offgrid'],
      plausible: { min: 0, max: 10 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
  },
  { label: 'Hours with another price', one: 'Hours' },
);

/** What electricity from the grid costs by the hour. */
export const tariff = group(
  {
    price: small('Price of a kilowatt-hour', 10, 'With all that is charged by the kilowatt-hour.'),
    bands,
    demand: small(
      'For each kW of a month’s highest quarter of an hour',
      100,
      'A demand charge. Most houses pay none: leave it empty.',
    ),
    feedIn: small('Paid for a kilowatt-hour fed in', 10),
  },
  {
    label: 'What the grid charges',
    help: 'In your money, from the bill or the tariff sheet; every day of the week is taken alike.',
  },
);

/** Motors that start by themselves while the unit runs. */
export const motors = map(
  {
    name: text({ label: 'Name' }),
    start: quantity('electric-power', {
      label: 'Takes in its first second',
      help: 'Five to six times its running power unless it starts softly. A well pump of 1/2 hp: about 3 kW.',
      neededBy: ['circuit'],
      plausible: { min: 50, max: 30_000 },
      possible: { min: 0 },
      usually: 'estimated',
    }),
  },
  { label: 'Motors, one by one', one: 'Motor' },
);
