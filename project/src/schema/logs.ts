import { logQuantities } from '../log/quantities.ts';
import { blob, choice, group, map, quantity, text } from './field.ts';

const column = (label: string) =>
  group({ name: text({ label: 'Column' }), unit: text({ label: 'Unit in the file' }) }, { label });

const c = (id: keyof typeof logQuantities) => column(logQuantities[id].label);

/** What the house wrote down itself: tables of power and temperature, and how each is to be read. */
export const logs = map(
  {
    name: text({ label: 'Name of the file' }),
    blob: blob({ label: 'File' }),
    clock: choice(
      {
        standard: 'Standard time all year',
        utc: 'Greenwich time (UTC)',
        europe: 'As in Europe: an hour ahead in summer',
        america: 'As in North America: an hour ahead in summer',
      },
      {
        label: 'What its clock shows',
        help: 'Rows that state their distance from Greenwich need no answer.',
        default: 'standard',
      },
    ),
    days: choice(
      { 'year-first': 'Year first', 'day-first': 'Day first', 'month-first': 'Month first' },
      { label: 'How days are written', help: 'Only asked where the file itself does not settle it.' },
    ),
    decimal: choice(
      { point: 'Decimal point', comma: 'Decimal comma' },
      { label: 'Decimal mark', help: 'Only asked where the file itself does not settle it.' },
    ),
    airflow: quantity('flow', {
      label: 'Air flow of the unit, where the log has none',
      help: 'With supply and return air it gives the heat. As measured, or from the blower’s table.',
      neededBy: [],
      plausible: { min: 0.05, max: 1.5 },
      possible: { above: 0 },
      usually: 'measured',
    }),
    columns: group(
      {
        outdoor: c('outdoor'),
        indoor: c('indoor'),
        indoor2: c('indoor2'),
        indoor3: c('indoor3'),
        unitPower: c('unitPower'),
        housePower: c('housePower'),
        heat: c('heat'),
        supply: c('supply'),
        return: c('return'),
        flow: c('flow'),
        sun: c('sun'),
        sunPower: c('sunPower'),
        wind: c('wind'),
        battery: c('battery'),
        humidity: c('humidity'),
      },
      { label: 'Columns', help: 'Which column holds what, and in which unit.' },
    ),
  },
  {
    label: 'Logs',
    one: 'Log',
    help: 'Tables from meters, inverters and thermometers: what the house really loses and the unit really gives is worked out of them.',
  },
);
