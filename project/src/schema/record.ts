import { ductKind, ductSize } from './ductSize.ts';
import { choice, date, flag, group, map, quantity, text } from './field.ts';
import { hands, life, scopePrices } from './lifeMoney.ts';
import { pieceToCut } from './stockPiece.ts';
import { timeOfDay } from './timeOfDay.ts';
import { done, off, putOff, quietHours } from './workDone.ts';

/** Where a thing stands on the shopping list; the list writes it when something is ticked there. */
const lineOfList = text({ label: 'Line of the shopping list', help: 'Written by the list when you tick it there.' });

/** Things that get bought. From `ordered` on they are judged and never resized. */
export const items = map(
  {
    name: text({ label: 'Name' }),
    state: choice(
      { idea: 'Idea', chosen: 'Chosen', ordered: 'Ordered', arrived: 'Arrived', fitted: 'Fitted' },
      { label: 'State', default: 'idea' },
    ),
    of: text({ label: 'Stands for', help: 'The entry of the plan it is bought for.' }),
    line: lineOfList,
    amount: text({ label: 'How much was ordered', help: 'With its unit: 3, or 25 ft. Needed from “Ordered” on.' }),
    cost: quantity('money', {
      label: 'Cost',
      neededBy: [],
      plausible: { min: 0, max: 50_000 },
      possible: { min: 0 },
      usually: 'estimated',
    }),
  },
  { label: 'Items', one: 'Item' },
);

const crew = map(
  {
    name: text({ label: 'Name' }),
    skill: choice({ new: 'New to it', handy: 'Handy', practised: 'Practised' }, { label: 'Skill', default: 'handy' }),
  },
  { label: 'Crew', one: 'Person' },
);

const windows = map(
  {
    day: date({ label: 'Day' }),
    from: timeOfDay('From', { neededBy: ['schedule'] }),
    duration: quantity('time', {
      label: 'For',
      neededBy: ['schedule'],
      plausible: { min: 1200, max: 57_600 },
      possible: { min: 0 },
      usually: 'estimated',
    }),
    people: quantity('count', {
      label: 'People there',
      help: 'Left empty: the whole crew.',
      neededBy: [],
      plausible: { min: 1, max: 12 },
      possible: { min: 1 },
      usually: 'estimated',
    }),
  },
  { label: 'Free time', one: 'Window' },
);

const dates = group(
  {
    doneBy: date({
      label: 'Done by',
      help: 'The last day on which work may end. Left empty nothing is held against it.',
    }),
    clock: choice(
      { standard: 'Standard time', summer: 'Summer time, one hour ahead' },
      { label: 'What clocks show on those days', default: 'standard' },
    ),
    planFrom: date({
      label: 'Plan from',
      help: 'Nothing is planned before that day. Left empty: from the last thing ticked off.',
    }),
    ...quietHours,
  },
  { label: 'Dates' },
);

const stock = map(
  {
    name: text({ label: 'What' }),
    amount: text({
      label: 'How much',
      help: 'With its unit: 3, or 25 ft. Without it nothing is taken off the list; of pieces to cut from it is one.',
    }),
    line: lineOfList,
    ...pieceToCut,
    duct: ductKind(
      'A size of duct to be had',
      'Only for duct: the plan then counts its size among those it may choose.',
    ),
    ...ductSize,
  },
  { label: 'At hand, and duct sizes to be had', one: 'Thing' },
);

/** Kinds of shop. */
const shops = {
  merchant: 'Building merchant',
  heating: 'Heating and ventilation supplier',
  electrical: 'Electrical supplier',
  dealer: 'Dealer or maker of the unit',
} as const;

const prices = map(
  {
    name: text({ label: 'What' }),
    unit: text({ label: 'Sold by', help: 'Each, a sheet, a 25 ft bag, a box of 100.' }),
    line: lineOfList,
    shop: choice(shops, { label: 'Shop', help: 'Left empty: where such things are usually sold.', neededBy: [] }),
    price: quantity('money', {
      label: 'Price',
      neededBy: ['materials'],
      plausible: { min: 0, max: 20_000 },
      possible: { min: 0 },
      usually: 'nameplate',
    }),
    duct: ductKind(
      'It is duct',
      'Only for duct and its parts: with kind and size the price steers the sizes, which are then to be had.',
    ),
    part: choice(
      { run: 'Duct by length', end: 'Collar, boot or other end', bend: 'Elbow or bend' },
      { label: 'Which part of it', default: 'run' },
    ),
    ...ductSize,
    piece: quantity('length', {
      label: 'Length you get for the price',
      help: 'One foot or metre, or the whole bag or pipe: 25 ft. Without it a price of duct by length is not used.',
      neededBy: [],
      plausible: { min: 0.2, max: 40 },
      possible: { above: 0 },
      usually: 'nameplate',
    }),
  },
  { label: 'Prices', one: 'Price', help: 'In your own money, all in the same. A price may be a range.' },
);

const deliveries = map(
  {
    name: text({ label: 'Name', help: 'The mail boat, the merchant’s lorry, the dealer’s freight.' }),
    day: date({ label: 'Arrives on' }),
    orderBy: date({ label: 'Order by', help: 'The last day on which an order still comes with it.' }),
    lead: quantity('time', {
      label: 'Order ahead by',
      help: 'Where no day to order by is entered: how long before it arrives an order must be in.',
      neededBy: [],
      plausible: { min: 0, max: 180 * 86_400 },
      possible: { min: 0 },
      usually: 'estimated',
    }),
    at: timeOfDay('Arrives at', {
      help: 'Left empty nothing is planned with it before six in the evening: lorries and boats seldom say when.',
      default: 64_800,
    }),
    goods: text({
      label: 'Brings these things',
      help: 'Names as on the shopping list, or their beginnings, with semicolons between. Left empty: all that comes from the shop below and no other delivery names.',
      longest: 2000,
    }),
    amounts: map(
      {
        good: text({ label: 'Thing', help: 'Its name as on the shopping list, or the beginning of it.' }),
        amount: text({ label: 'How much of it', help: 'With its unit where it has one: 3, 2 bags, 25 ft, 10 m.' }),
      },
      {
        label: 'How much it brings',
        one: 'Thing',
        help: 'Only where one thing comes with several deliveries, or too little of it may come. Empty: enough comes.',
      },
    ),
    brings: choice({ all: 'Everything', ...shops }, { label: 'Brings what comes from', default: 'all' }),
  },
  { label: 'Deliveries', one: 'Delivery', help: 'Boats, lorries and freight with a day of their own.' },
);

/** Who does it, when, and with what. */
export const work = group(
  { crew, windows, dates, hands, stock, prices, deliveries, scopePrices, life, done, putOff, off },
  { label: 'Work' },
);

/** Photos are blobs named by hash, outside the document; here stands what they show. */
export const photos = map(
  {
    blob: text({ label: 'File' }),
    caption: text({ label: 'Caption' }),
    day: date({ label: 'Day' }),
    shows: text({ label: 'Shows' }),
  },
  { label: 'Photos', one: 'Photo' },
);

/** What the project is called, and whether its data are invented. */
export const about = group(
  {
    name: text({ label: 'Name of the project' }),
    note: text({ label: 'Note', longest: 4000 }),
    invented: flag({ label: 'Invented data', help: 'Nothing in it is a real place, product or price.' }),
  },
  { label: 'About' },
);
