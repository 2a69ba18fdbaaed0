import { date, group, hours, quantity, text } from './field.ts';

/** Where a learned value comes from, so that it can be held against the plan, and taken back. */
const from = {
  log: text({ label: 'Log' }),
  from: date({ label: 'From' }),
  to: date({ label: 'To' }),
  accepted: date({ label: 'Taken into the plan on' }),
};

/** What a log taught of the house, and its owner took into the plan. Without it the plan stands as it was entered. */
export const learnedHouse = group(
  {
    ...from,
    loss: quantity('fraction', {
      label: 'Loss, against that of the plan',
      help: 'Everything that loses heat, walls, windows and leaks alike, is taken times this: a log cannot part them. With a range it also says how well the whole is known.',
      neededBy: [],
      plausible: { min: 0.5, max: 2 },
      possible: { above: 0, max: 10 },
      usually: 'measured',
    }),
    lossPerDegree: quantity('conductance', {
      label: 'Loss for each degree, as the log has it',
      help: 'For the record; the plan is worked out with the share above.',
      neededBy: [],
      plausible: { min: 20, max: 1500 },
      possible: { above: 0 },
      usually: 'measured',
    }),
  },
  { label: 'Learned from a log', help: 'Taken in on the page of commissioning, and taken out there in one step.' },
);

/** What a log taught of the household beside the unit. */
export const learnedHousehold = group(
  {
    ...from,
    daily: quantity('energy', {
      label: 'Used in a day beside the unit, as the log has it',
      help: 'Stands in the place of what was entered. Its range counts what the seasons that were not logged may differ by.',
      neededBy: [],
      plausible: { min: 0.2, max: 60 },
      possible: { min: 0 },
      usually: 'measured',
    }),
    hours: hours({
      label: 'By the hour of the day, as the log has it',
      help: '24 numbers from midnight on: the middle of each hour of the days that were logged.',
    }),
  },
  { label: 'Learned from a log', help: 'Taken in on the page of commissioning, and taken out there in one step.' },
);

/** What a log taught of a unit. */
export const learnedUnit = group(
  {
    ...from,
    power: quantity('fraction', {
      label: 'Power drawn for its heat, against the plan',
      help: 'Heating rows of the sheet draw this many times as much.',
      neededBy: [],
      plausible: { min: 0.7, max: 1.6 },
      possible: { above: 0, max: 10 },
      usually: 'measured',
    }),
  },
  { label: 'Learned from a log', help: 'Taken in on the page of commissioning, and taken out there in one step.' },
);
