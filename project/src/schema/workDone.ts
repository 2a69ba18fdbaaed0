import { choice, date, map, quantity, text } from './field.ts';
import { timeOfDay } from './timeOfDay.ts';

const taskId = text({ label: 'Task', help: 'The task’s name in the plan, such as air/hang. The Do screen writes it.' });
const partNumber = (label: string, help: string) =>
  quantity('count', {
    ...{ label, help, neededBy: [], plausible: { min: 1, max: 200 }, possible: { min: 1 } },
    usually: 'measured',
  });

/** What is ticked off. A later tick of the same task stands for the earlier ones too. */
export const done = map(
  {
    task: taskId,
    part: partNumber('Parts done', 'Up to which safe stop, counted from 1. Left empty: all of it.'),
    of: partNumber('Of how many parts', 'As the plan had it on that day.'),
    day: date({ label: 'Day' }),
    at: timeOfDay('Ended at', { help: 'Left empty: at the end of that day.' }),
    minutes: quantity('time', {
      label: 'Time it took',
      help: 'At work, without breaks. With three known the rest is planned at your own pace.',
      neededBy: [],
      plausible: { min: 60, max: 172_800 },
      possible: { above: 0 },
      usually: 'measured',
    }),
  },
  { label: 'Done', one: 'Tick' },
);

/** Not before a day, by choice: “not today”. */
export const putOff = map(
  { task: taskId, until: date({ label: 'Not before' }) },
  { label: 'Put off', one: 'Task put off' },
);

/** When power or water is off. */
export const off = map(
  {
    what: choice({ power: 'Power', water: 'Water' }, { label: 'What is off', default: 'power' }),
    day: date({ label: 'Day' }),
    from: timeOfDay('From', { help: 'Left empty: from midnight.' }),
    duration: quantity('time', {
      label: 'For',
      help: 'Left empty: to the end of that day.',
      neededBy: [],
      plausible: { min: 600, max: 2_592_000 },
      possible: { min: 0 },
      usually: 'estimated',
    }),
  },
  { label: 'Power or water off', one: 'Time off' },
);

/** Hours of every day in which nothing noisy is done. */
export const quietHours = {
  quietFrom: timeOfDay('Quiet from', { help: 'No noisy work from then on, every day. Needs both times.' }),
  quietTo: timeOfDay('Quiet until', { help: 'May lie past midnight: from 20:00 until 8:00.' }),
};
